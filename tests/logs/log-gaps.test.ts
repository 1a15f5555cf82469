import { describe, expect, test } from 'vitest';
import { isMissing, type Known } from '../../src/values/value.ts';
import { logOf } from './a-log-summary.ts';

const COLUMNS = { time: 't (s)', voltage: 'U (V)', current: 'I (A)' };
const HEADS = Object.values(COLUMNS);

/** Rows ten seconds apart at 20 V: 5 A at first, 3 A at the end; `hole` rows are left out or blank. */
function logWith(minutes: number, hole: (second: number) => 'none' | 'row' | 'cell'): ReturnType<typeof logOf> {
  const rows = Array.from({ length: minutes * 6 + 1 }, (_, index) => index * 10)
    .filter((second) => hole(second) !== 'row')
    .map((second) => [String(second), '20.00', hole(second) === 'cell' ? '' : second < 60 ? '5.000' : '3.000']);
  return logOf({ columns: COLUMNS }, HEADS, rows);
}

function span(known: Known | undefined): readonly string[] {
  return known === undefined || isMissing(known) ? ['missing'] : [known.low, known.nominal, known.high].map((number) => number.toFixed(0));
}

const within =
  (from: number, to: number) =>
  (second: number): boolean =>
    second > from && second < to;

describe('a stretch of a log without numbers', () => {
  const missingRows = (second: number): 'none' | 'row' => (within(600, 1200)(second) ? 'row' : 'none');
  const blankCells = (second: number): 'none' | 'cell' => (within(600, 1200)(second) ? 'cell' : 'none');

  // 600 s bridged at 3 A; nobody knows whether 3 A or 5 A flowed: up to 1200 A s more.
  test.each([
    ['rows that are missing', missingRows],
    ['cells that are blank', blankCells],
  ])('%s may have held anything between the extremes, and charge and mean say so', (_, hole) => {
    const log = logWith(40, hole);
    const [low, nominal, high] = span(log.charge).map(Number);
    expect([nominal === undefined || low === undefined ? 0 : nominal - low, (high ?? 0) - (nominal ?? 0)]).toEqual([0, 1200]);
    const mean = log.channels.find(({ quantity }) => quantity === 'current')?.mean;
    // 1200 A s over 2400 s are half an ampere.
    expect([(mean?.nominal ?? 0) - (mean?.low ?? 0), ((mean?.high ?? 0) - (mean?.nominal ?? 0)).toFixed(3)]).toEqual([0, '0.500']);
  });

  test('does not count towards the half hour that shows what is sustained', () => {
    // 35 minutes from first to last row, 25 of them seen.
    const { sustained } = logWith(35, missingRows).power;
    expect(isMissing(sustained) && sustained.reason).toBe('sustained not shown: 25 min under load with rows, 30 min are needed');
    expect(span(logWith(35, () => 'none').power.sustained)).toEqual(['60', '60', '60']);
    expect(span(logWith(45, missingRows).power.sustained)).toEqual(['60', '60', '60']);
  });
});
