import { describe, expect, test } from 'vitest';
import { levelChange } from '../../src/logs/level-change.ts';
import { levelSteps } from '../../src/logs/level-steps.ts';
import { logSteps } from '../../src/logs/log-steps.ts';
import type { LogSeries } from '../../src/logs/log-rows.ts';
import { isMissing } from '../../src/values/value.ts';

const STEP = 0.01;
const time = Float64Array.from({ length: 4001 }, (_, row) => row * STEP);

function series(quantity: string, dimension: LogSeries['dimension'], of: (second: number) => number): LogSeries {
  return { quantity, dimension, head: quantity, values: time.map(of), resolution: 0.001 };
}

/** A device is plugged into the neighbour at 20 s: the port goes dark for 0.8 s and comes back with less. */
const volts = series('voltage', 'voltage', (at) => (at >= 20 && at < 20.8 ? 4.8 : 20.05) + 0.004 * Math.sin(at * 977));
const amps = series('current', 'current', (at) => (at < 20 ? 4.7 : at < 20.8 ? 0.1 : 3.2) + 0.004 * Math.sin(at * 733));
const log = { time, series: [volts, amps], usual: STEP, at: 'logs.plug' };

describe('steps of a log', () => {
  test('a drop to another level is found at its first row, noise and ramps are not', () => {
    expect(levelSteps(time, amps.values, 4.8)).toEqual([2000, 2080]);
    expect(
      levelSteps(
        time,
        time.map((at) => 5 + 0.02 * Math.sin(at * 991)),
        5.02,
      ),
    ).toEqual([]);
    expect(
      levelSteps(
        time,
        time.map((at) => 20 - at / 4),
        20,
      ),
    ).toEqual([]);
  });

  test('a named event takes the step beside it, with how deep it went and when it settled', () => {
    const [event, ...others] = logSteps(log, [{ at: 19, words: 'phone plugged into C2' }]);
    expect(event?.event).toBe('phone plugged into C2');
    expect(event?.at).toBe(20);
    const change = event?.changes.find(({ quantity }) => quantity === 'voltage');
    expect(change?.before.nominal.toFixed(2)).toBe('20.05');
    expect(change?.lowest.nominal.toFixed(2)).toBe('4.80');
    // The way back after 0.8 s is part of what the event did, and the new level is that of the time after it.
    expect(change?.after.nominal.toFixed(2)).toBe('20.05');
    expect(change?.settling).toMatchObject({ nominal: 0.8 });
    expect(others).toEqual([]);
    expect(logSteps(log, []).map(({ at }) => at)).toEqual([20, 20.8]);
  });

  test('an event that moved no level is followed all the same', () => {
    const steady = { ...log, series: [series('voltage', 'voltage', () => 20)] };
    const [event] = logSteps(steady, [{ at: 12, words: 'cable touched' }]);
    expect(event?.at).toBe(12);
    expect(event?.changes[0]).toMatchObject({ before: { nominal: 20 }, after: { nominal: 20 }, settling: { nominal: 0 } });
  });

  test('settling is the time until the level stays within 5 % of the new one', () => {
    // From 5 V towards 9 V with a time constant of 50 ms: 4 V × e^(−t / 50 ms) is 0.45 V after 50 ms × ln(4 / 0.45) = 109 ms.
    const rising = time.map((at) => (at < 10 ? 5 : 9 - 4 * Math.exp(-(at - 10) / 0.05)));
    const change = levelChange(time, rising, { from: 0, at: 1000, to: 4001 });
    const exact = 0.05 * Math.log(4 / 0.45);
    expect(Math.abs((change?.settling ?? NaN) - exact)).toBeLessThanOrEqual(STEP);
  });

  test('a level that never settles says so', () => {
    const restless = { ...log, series: [series('voltage', 'voltage', (at) => (at < 20 ? 5 : 9 + 2 * Math.sin(at * 40)))] };
    const [step] = logSteps(restless, [{ at: 20, words: 'load on' }]);
    const settling = step?.changes[0]?.settling;
    expect(settling !== undefined && isMissing(settling) ? settling.reason : '').toMatch(/did not settle/);
  });

  test('a load that cycles a thousand times lists a dozen steps', () => {
    const cycling = { ...log, series: [series('current', 'current', (at) => (Math.floor(at) % 2 === 0 ? 1 : 2))] };
    expect(logSteps(cycling, []).length).toBe(12);
  });
});
