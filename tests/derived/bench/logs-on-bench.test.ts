import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instrumentsUsed } from '../../../src/derived/bench/instruments-used.ts';
import { logsOnBench } from '../../../src/derived/bench/logs-on-bench.ts';
import { readOnBench } from '../../../src/derived/bench/read-on-bench.ts';
import type { Bench } from '../../../src/entry/bench.ts';
import type { Entry, LogFile } from '../../../src/entry/entry.ts';
import { parseFrontmatter } from '../../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../../src/entry/read-entry.ts';
import type { LogSummary } from '../../../src/logs/log-summary.ts';
import { logValues } from '../../../src/logs/log-values.ts';
import { benchInText } from '../../../src/pipeline/bench-in-text.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';
import { logEfficiency } from '../../../src/derived/log-efficiency.ts';
import { foldBackLog, logOf } from '../../logs/a-log-summary.ts';

const BENCH: Bench = benchInText(
  [
    'instruments:',
    '  load: { name: electronic load, accuracy: { voltage: "0.5 % + 3, 1 mV", current: 0.1 % + 5 mA } }',
    '  tester: { name: USB tester, accuracy: { power: 1 % + 2 digits, voltage: 0.2 %, current: 0.3 %, time: 0.01 % } }',
    '  probe: { name: thermocouple }',
  ].join('\n'),
).bench;

function entryWith(instrument: string | null): Entry {
  const text = `---\ntitle: Trial\nstatus: draft\ndevice: { maker: Larkmoor, name: Trial, kind: wall charger }\nports: { C1: { connector: USB-C, offers: 20 V 5 A } }\nlogs: { full load: { file: c1.csv${instrument === null ? '' : `, instrument: ${instrument}`} } }\n---\n`;
  const { entry } = readEntry({ slug: 'trial', file: 'teardowns/trial/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error('the entry of the test was not read');
  return entry;
}

function logRead(instrument: string, more: Partial<LogFile> = {}): LogSummary {
  const [log] = logsOnBench([foldBackLog(more)], entryWith(instrument), BENCH);
  if (log === undefined) throw new Error('the log of the test is gone');
  return log;
}

function span(known: Known | undefined): readonly [number, number] {
  if (known === undefined || isMissing(known)) throw new Error('a value of the test is missing');
  return [known.low, known.high];
}

/** Half of the interval, to six digits: the rest is binary noise. */
function half(known: Known | undefined): number {
  const [low, high] = span(known);
  return Number(((high - low) / 2).toPrecision(6));
}

/** 20 V within 0.5 % and three times 1 mV; 5 and 3.25 A within 0.1 % and 5 mA. */
const [VOLTS, AMPS] = [
  { share: 0.005, fixed: 0.003 },
  { share: 0.001, fixed: 0.005 },
];

describe('mean power out over mean power in', () => {
  /** 20 V 3 A out of 24 V 2.75 A: 60 W of 66 W. */
  function twoSided(instrument: string): LogSummary {
    const columns = { time: 't (s)', voltage: 'U (V)', current: 'I (A)', 'input voltage': 'Ui (V)', 'input current': 'Ii (A)' };
    const more: Partial<LogFile> = { columns };
    const rows = [0, 1, 2, 3, 4].map((second) => [String(second), '20.000', '3.0000', '24.000', '2.7500']);
    const [log] = logsOnBench([logOf(more, Object.values(columns), rows)], entryWith(instrument), BENCH);
    if (log === undefined) throw new Error('the log of the test is gone');
    return log;
  }

  it('keeps what the counts leave open, and not the gains that both sides share', () => {
    // Tester: 0.2 % of volts and 0.3 % of amperes and nothing fixed: all of it cancels. 60 / 66 = 0.90909.
    const [low, high] = span(logEfficiency(twoSided('tester')) ?? undefined);
    expect([low.toFixed(6), high.toFixed(6)]).toEqual(['0.909091', '0.909091']);
  });

  it('takes gains of their own where each side has its own instrument', () => {
    const own = '{ voltage: tester, current: tester, "input voltage": load, "input current": load }';
    const [low, high] = span(logEfficiency(twoSided(own)) ?? undefined);
    // Out 60 W within 0.5006 %; in 24 V within 0.5 % and 3 mV, 2.75 A within 0.1 % and 5 mA.
    const out = 60 * (1.002 * 1.003 - 1);
    const taken = 66 * (1.005 * 1.001 - 1) + 1.005 * 0.005 * 24 + 1.001 * 0.003 * 2.75 + 0.003 * 0.005;
    expect([low.toFixed(6), high.toFixed(6)]).toEqual([((60 - out) / (66 + taken)).toFixed(6), ((60 + out) / (66 - taken)).toFixed(6)]);
  });
});

describe('the figures of a log and the instrument that wrote it', () => {
  it('a mean of 1201 rows is as wide as one row: a gain and an offset do not average out', () => {
    const voltage = logRead('load').channels.find(({ quantity }) => quantity === 'voltage');
    expect([voltage?.rows, half(voltage?.mean), half(voltage?.highest.value)]).toEqual([1201, 0.103, 0.103]);
  });

  it('watts from volts and amperes carry both accuracies, the fixed parts by the size of the other', () => {
    const { power } = logRead('load');
    const share = (1 + VOLTS.share) * (1 + AMPS.share) - 1;
    const fixed = 1.005 * AMPS.fixed * 20 + 1.001 * VOLTS.fixed * 5 + VOLTS.fixed * AMPS.fixed;
    expect([half(power.peak), half(power.sustained)]).toEqual([
      Number((share * 100 + fixed).toPrecision(6)),
      Number((share * 65 + fixed).toPrecision(6)),
    ]);
  });

  it('the energy and the charge of any rows whose errors keep to the accuracy lie in the interval', () => {
    const log = logRead('load');
    const error = fc.double({ min: -1, max: 1, noNaN: true });
    const rows = fc.array(fc.tuple(error, error, error, error), { minLength: 1, maxLength: 40 });
    const isWithin = ([low, high]: readonly [number, number], sum: number): boolean => sum >= low - 1e-6 && sum <= high + 1e-6;
    fc.assert(
      fc.property(rows, (errors) => {
        let [energy, charge] = [0, 0];
        const at = (row: number): readonly [number, number] => {
          const [gain = 0, offset = 0, gainOfAmps = 0, offsetOfAmps = 0] = errors[row % errors.length] ?? [];
          const amps = row < 300 ? 5 : 3.25;
          return [20 + gain * VOLTS.share * 20 + offset * VOLTS.fixed, amps + gainOfAmps * AMPS.share * amps + offsetOfAmps * AMPS.fixed];
        };
        for (let row = 1; row <= 1200; row += 1) {
          const [[volts, amps], [voltsBefore, ampsBefore]] = [at(row), at(row - 1)];
          energy += volts * amps + voltsBefore * ampsBefore;
          charge += amps + ampsBefore;
        }
        return isWithin(span(log.energy), energy) && isWithin(span(log.charge), charge);
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it('all errors to one side reach the edge: the interval is no wider than it has to be', () => {
    const log = logRead('load');
    // 5 A for 599 s, 3.25 A for 1800 s and one step of two seconds between them, as the trapezoids of the rows have it.
    const amps = 5 * 598 + (5 + 3.25) + 3.25 * 1800;
    const most = (amps * 1.001 + 0.005 * 2400 - amps) / amps;
    const [low, high] = span(log.charge).map((sum) => sum.toPrecision(8));
    expect([low, high]).toEqual([amps * (1 - most), amps * (1 + most)].map((sum) => sum.toPrecision(8)));
  });

  it('steps carry it too, and what prose quotes by name is the same value', () => {
    const log = logRead('load');
    const values = logValues(log);
    expect(half(values['full-load.step-1.current-after'])).toBe(0.00825);
    expect(values['full-load.energy']).toBe(log.energy);
    expect(values['full-load.sustained-power']).toMatchObject({ origin: { evidence: 'measured', instrument: 'load' } });
  });

  it('no more digits are printed than the interval carries: 65 W within 0.5 W', () => {
    const { sustained } = logRead('load').power;
    const bare = foldBackLog().power.sustained;
    expect([sustained, bare].map((known) => (isMissing(known) ? 0 : known.significant))).toEqual([3, 4]);
  });

  it('the accuracy of the clock widens times, and sums on top of their rows', () => {
    const log = logRead('tester');
    expect(half(log.duration)).toBe(0.24);
    const charge = foldBackLog().charge;
    const amount = isMissing(charge) ? 0 : charge.nominal;
    expect(half(log.charge)).toBe(Number((amount * (0.003 * 1.0001 + 0.0001)).toPrecision(6)));
  });

  it('a column of watts has the accuracy that is stated for watts; one that was computed that of volts and amperes', () => {
    const { channels } = logRead('tester');
    const power = channels.find(({ quantity }) => quantity === 'power');
    expect([power?.head, half(power?.highest.value)]).toEqual([null, Number((100 * (1.002 * 1.003 - 1)).toPrecision(6))]);
  });

  it('may have an instrument by the word of its column; columns that none is named for stay as they were', () => {
    const { channels, energy } = logRead('{ voltage: tester }');
    expect(channels.map(({ quantity, mean }) => [quantity, half(mean)])).toEqual([
      ['voltage', 0.04],
      ['current', 0],
      ['power', 0],
    ]);
    expect(half(energy)).toBe(0);
  });

  it('an instrument without an accuracy is named and widens nothing; without an instrument the log is untouched', () => {
    const log = logRead('probe');
    expect([half(log.energy), log.channels[0]?.mean.origin]).toEqual([0, expect.objectContaining({ instrument: 'probe' })]);
    const bare = foldBackLog();
    expect(logsOnBench([bare], entryWith(null), BENCH)[0]).toEqual(bare);
  });

  it('counts each column of the file for the bench page', () => {
    expect(instrumentsUsed(entryWith('load'), [logRead('load')])).toEqual([['load', 2]]);
  });

  it('a name that nobody knows is said at its place, in both writings', () => {
    const said = (instrument: string): unknown => readOnBench(entryWith(instrument), BENCH).unknown;
    const message = 'There is no instrument "laod" on the bench or in this entry. Did you mean "load"?';
    expect(said('laod')).toEqual([{ path: ['logs', 'full load', 'instrument'], message }]);
    expect(said('{ voltage: laod }')).toEqual([{ path: ['logs', 'full load', 'instrument', 'voltage'], message }]);
  });
});
