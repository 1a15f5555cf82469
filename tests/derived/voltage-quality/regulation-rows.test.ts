import { describe, expect, it } from 'vitest';
import { readOnBench } from '../../../src/derived/bench/read-on-bench.ts';
import { cableRows } from '../../../src/derived/voltage-quality/cable-rows.ts';
import { regulationRows } from '../../../src/derived/voltage-quality/regulation-rows.ts';
import type { Bench } from '../../../src/entry/bench.ts';
import type { Entry } from '../../../src/entry/entry.ts';
import { parseFrontmatter } from '../../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../../src/entry/read-entry.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';

const ACCURACY = { ofReading: 0.001, ofRange: 0, range: null, counts: 0, resolution: null, fixed: 0 };
const BENCH: Bench = {
  instruments: [
    {
      ...{ id: 'meter', name: 'multimeter', measures: null, calibrated: null, note: null },
      accuracies: [{ quantity: 'voltage', written: '0.1 %', ...ACCURACY }],
    },
  ],
  methods: [],
};

function entryWith(measurements: string): Entry {
  const text = `---\ntitle: Trial\nstatus: draft\ndevice: { maker: Larkmoor, name: Trial, kind: wall charger }\nports: { C1: { connector: USB-C, offers: [5 V 3 A, 12 V 3 A] } }\nmeasurements:\n${measurements}\n---\n`;
  const { entry } = readEntry({ slug: 'trial', file: 'teardowns/trial/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error('the entry of the test was not read');
  return readOnBench(entry, BENCH).entry;
}

const scaled = (known: Known, factor: number, decimals: number): string =>
  isMissing(known) ? known.reason : [known.low, known.nominal, known.high].map((number) => (number * factor).toFixed(decimals)).join(' / ');

function regulation(measurements: string): readonly string[] {
  return regulationRows(entryWith(measurements)).map(
    ({ what, at, first, second, regulation: known }) =>
      `${what} ${String(at)}, ${first.words} to ${second.words}: ${scaled(known, 100, 2)}`,
  );
}

describe('load regulation', () => {
  // U. S. Shah, Electronic Instrumentation and Measurements, example 16-1: 12 V without load and 11.9 V with it are 0.83 %.
  it('of 12.00 V without load and 11.90 V at full load is 0.83 %', () => {
    expect(
      regulation(
        '  regulation: [{ value: 12.00 V, output: 12 V, load: 0 A, port: C1 }, { value: 11.90 V, output: 12 V, load: 3 A, port: C1 }]',
      ),
    ).toEqual(['load null, no load to 3 A: 0.75 / 0.83 / 0.92']);
  });

  it('goes from the lowest to the highest load of a run, and leaves out what is above the rating', () => {
    const run = (points: string): readonly string[] =>
      regulation(`  efficiency: { port: C1, line: 230 V, output: 12 V, at: connector, points: { ${points} } }`);
    expect(run('0.3 A: 12.100 V 4 W, 1.5 A: 12.060 V 20 W, 3 A: 12.000 V 40 W, 3.4 A: 11.5 V 44 W')).toEqual([
      'load 230 V line, 0.3 A to 3 A: 0.82 / 0.83 / 0.83',
    ]);
    expect(run('10 %: 12.100 V 4 W, 100 %: 12.000 V 40 W')).toEqual(['load 230 V line, 10 % to full load: 0.82 / 0.83 / 0.83']);
  });

  it('is negative where the voltage rises, and not told from heavy loads alone', () => {
    const run = (points: string): readonly string[] =>
      regulation(`  efficiency: { port: C1, line: 230 V, output: 12 V, at: connector, points: { ${points} } }`);
    expect(run('0.3 A: 12.000 V 4 W, 3 A: 12.120 V 40 W')[0]).toContain('/ -1.00 /');
    expect(run('2.25 A: 12.00 V 30 W, 3 A: 11.98 V 40 W')).toEqual([]);
  });

  // 0.1 % of the reading lies to the same side in both and cancels; the last digit, 5 mV either way, is left: 0.10 / 12 V ± 10 mV / 12 V.
  it('carries the last digits, and no gain that one meter has in both readings', () => {
    expect(
      regulation(
        '  efficiency: { port: C1, line: 230 V, output: 12 V, at: connector, instrument: meter, points: { 0.3 A: 12.00 V 4 W, 3 A: 11.90 V 40 W } }',
      ),
    ).toEqual(['load 230 V line, 0.3 A to 3 A: 0.75 / 0.83 / 0.92']);
  });
});

describe('line regulation', () => {
  const runs = (low: string): string =>
    ['230 V', '115 V']
      .map(
        (line, index) =>
          `    - { port: C1, line: ${line}, output: 12 V, at: connector, points: { 1.5 A: 12.05 V 20 W, 3 A: ${index === 0 ? '12.000 V' : low} 40 W } }\n`,
      )
      .join('');

  // The same example: 12 V and, with the line lower, 11.95 V are 0.42 %.
  it('of 12.00 V at 230 V and 11.95 V at 115 V is 0.42 %, at the highest load that both have', () => {
    expect(regulation(`  efficiency:\n${runs('11.950 V')}`).at(-1)).toBe('line at 3 A, 230 V line to 115 V line: 0.41 / 0.42 / 0.42');
  });

  it('asks for the same load at both lines', () => {
    const one = '    - { port: C1, line: 230 V, output: 12 V, at: connector, points: { 3 A: 12.00 V 40 W } }\n';
    const other = '    - { port: C1, line: 115 V, output: 12 V, at: connector, points: { 2.8 A: 12.00 V 38 W } }\n';
    expect(regulation(`  efficiency:\n${one}${other}`)).toEqual([]);
  });
});

describe('the port against the end of its cable', () => {
  const run = (place: string, volts: string, more = ''): string =>
    `    - { port: C1, line: 230 V, output: 5 V, at: ${place}${more}, points: { 3 A: ${volts} 18 W } }\n`;

  // An open data set of cable drops (beniceco/usb-cable-voltage-drop): 1 m of AWG 20 has 66.6 mΩ there and back, and takes 0.200 V at 3 A.
  it('of 5.020 V and 4.700 V at 3 A lost 320 mV, which are 107 mΩ beside the 67 mΩ of a metre of AWG 20', () => {
    const [row, ...others] = cableRows(
      entryWith(`  efficiency:\n${run('connector', '5.020 V')}${run('cable end', '4.700 V', ', cable: 1 m AWG 20')}`),
    );
    if (row === undefined) throw new Error('no row');
    expect(others).toEqual([]);
    expect([scaled(row.drop, 1e3, 0), scaled(row.resistance, 1e3, 1), scaled(row.own?.resistance ?? row.drop, 1e3, 1)]).toEqual([
      '319 / 320 / 321',
      '106.3 / 106.7 / 107.0',
      '66.6 / 66.6 / 66.6',
    ]);
    expect(scaled(row.own?.drop ?? row.drop, 1, 3)).toBe('0.200 / 0.200 / 0.200');
  });

  it('has no resistance of its own where length or gauge is not written', () => {
    const [row] = cableRows(entryWith(`  efficiency:\n${run('connector', '5.02 V')}${run('cable end', '4.70 V', ', cable: 1 m')}`));
    expect(row?.own?.resistance).toMatchObject({ missing: true });
    expect(cableRows(entryWith(`  efficiency:\n${run('connector', '5.02 V')}${run('cable end', '4.70 V')}`))[0]?.own).toBeNull();
  });

  it('is not compared at another current', () => {
    const other = '    - { port: C1, line: 230 V, output: 5 V, at: cable end, points: { 2 A: 4.80 V 12 W } }\n';
    expect(cableRows(entryWith(`  efficiency:\n${run('connector', '5.02 V')}${other}`))).toEqual([]);
  });
});
