import { describe, expect, it } from 'vitest';
import { readOnBench } from '../../../src/derived/bench/read-on-bench.ts';
import { voltageRows } from '../../../src/derived/voltage-quality/voltage-rows.ts';
import type { Bench } from '../../../src/entry/bench.ts';
import { parseFrontmatter } from '../../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../../src/entry/read-entry.ts';
import { isMissing } from '../../../src/values/value.ts';

const ACCURACY = { ofReading: 0.005, ofRange: 0, range: null, counts: 0, resolution: null, fixed: 0 };
const BENCH: Bench = {
  instruments: [
    {
      ...{ id: 'meter', name: 'multimeter', measures: null, calibrated: null, note: null },
      accuracies: [{ quantity: 'voltage', written: '0.5 %', ...ACCURACY }],
    },
  ],
  methods: [],
};

function verdicts(measurements: string, connector = 'USB-C', bench: Bench = { instruments: [], methods: [] }): readonly string[] {
  const text = `---\ntitle: Trial\nstatus: draft\ndevice: { maker: Larkmoor, name: Trial, kind: wall charger }\nports: { C1: { connector: ${connector}, offers: [5 V 3 A, 12 V 2 A, 3.3-11 V 3 A PPS] } }\nmeasurements:\n${measurements}\n---\n`;
  const { entry } = readEntry({ slug: 'trial', file: 'teardowns/trial/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error('the entry of the test was not read');
  return voltageRows(readOnBench(entry, bench).entry).map(({ verdict, band, offer }) => {
    const edges =
      band === null || isMissing(band.low) || isMissing(band.high)
        ? ''
        : ` ${band.low.nominal.toFixed(2)} to ${band.high.nominal.toFixed(2)}`;
    return `${typeof verdict === 'string' ? verdict : verdict.none}${edges}${offer === null ? '' : ` ${offer}`}`;
  });
}

const reading = (value: string, more = ''): string => `  regulation: [{ value: ${value}, output: 12 V, at: connector, port: C1${more} }]`;

describe('the voltage of a port against its band', () => {
  it('is 11.40 V to 12.60 V for 12 V', () => {
    expect(verdicts(reading('11.40 V'))).toEqual(['meets 11.40 to 12.60 fixed']);
    expect(verdicts(reading('11.39 V'))).toEqual(['misses 11.40 to 12.60 fixed']);
    expect(verdicts(reading('12.61 V'))).toEqual(['misses 11.40 to 12.60 fixed']);
  });

  it('is undecided where the edge lies inside the uncertainty of the meter', () => {
    // ±0.5 % of 11.39 V is ±0.057 V: 11.333 V to 11.447 V.
    expect(verdicts(reading('11.39 V', ', instrument: meter'), 'USB-C', BENCH)).toEqual(['undecided 11.40 to 12.60 fixed']);
    expect(verdicts(reading('11.50 V', ', instrument: meter'), 'USB-C', BENCH)).toEqual(['meets 11.40 to 12.60 fixed']);
    expect(verdicts(reading('11.30 V', ', instrument: meter'), 'USB-C', BENCH)).toEqual(['misses 11.40 to 12.60 fixed']);
  });

  it('reaches down to 4.00 V at the end of a cable for 5 V', () => {
    const at = (value: string): string => `  regulation: [{ value: ${value}, output: 5 V, at: cable end, port: C1 }]`;
    expect(verdicts(at('4.00 V'))).toEqual(['meets 4.00 to 5.25 fixed']);
    expect(verdicts(at('3.98 V'))).toEqual(['misses 4.00 to 5.25 fixed']);
  });

  it('is that of the programmable supply where no fixed offer has the voltage', () => {
    expect(verdicts('  regulation: [{ value: 8.31 V, output: 8.4 V, at: connector, port: C1 }]')).toEqual([
      'meets 7.98 to 8.82 PPS or AVS',
    ]);
  });

  it('takes the lowest and the highest of a run as one row', () => {
    const run =
      '  efficiency: { port: C1, line: 230 V, output: 12 V, at: connector, points: { 1 A: 12.20 V 13.9 W, 2 A: 11.20 V 25.6 W } }';
    expect(verdicts(run)).toEqual(['misses 11.40 to 12.60 fixed']);
  });

  it('leaves a dip inside another half volt undecided, and calls a deeper one a miss', () => {
    const dip = (value: string): string => `  droop: [{ value: ${value}, output: 5 V, at: connector, port: C1 }]`;
    expect([dip('4.80 V'), dip('4.30 V'), dip('4.10 V')].flatMap((each) => verdicts(each))).toEqual([
      'meets 4.75 to 5.25 fixed',
      'undecided 4.75 to 5.25 fixed',
      'misses 4.75 to 5.25 fixed',
    ]);
  });

  it('is not judged on a board, without a place, or at a barrel', () => {
    expect(verdicts('  regulation: [{ value: 11 V, output: 12 V, at: board, port: C1 }]')).toEqual(['measured on the board']);
    expect(verdicts('  regulation: [{ value: 11 V, output: 12 V, port: C1 }]')).toEqual(['not said where it was measured']);
    expect(verdicts(reading('11 V'), 'barrel')).toEqual(['the band is that of USB ports']);
  });

  it('judges no ripple', () => {
    expect(verdicts('  ripple: [{ value: 38 mV, output: 5 V, bandwidth: 20 MHz }]')).toEqual(['no published limit']);
  });
});
