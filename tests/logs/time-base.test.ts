import { describe, expect, test } from 'vitest';
import { timeBase, timeWriting, type TimeWriting } from '../../src/logs/time-base.ts';

const UNSAID: TimeWriting = { scale: null, parts: null, order: null };

/** Seconds from the first to each of these times. */
function seconds(times: readonly string[], said: TimeWriting = UNSAID, dates: readonly string[] | null = null): readonly number[] | string {
  const base = timeBase(times[0] ?? '', dates?.[0] ?? null, said, 'point');
  if ('refused' in base) return base.refused;
  const read = times.map((time, row) => base.read(time, dates?.[row] ?? null));
  return read.map((at) => Number((at - (read[0] ?? 0)).toFixed(6)));
}

describe('a time base', () => {
  test.each<[string, readonly string[], readonly number[]]>([
    ['seconds', ['3.5', '4.0', '10'], [0, 0.5, 6.5]],
    ['seconds since 1970, read from the first', ['1770142805', '1770142806.5'], [0, 1.5]],
    ['milliseconds since 1970, told by their size', ['1770142805000', '1770142806500'], [0, 1.5]],
    ['elapsed hours, minutes, seconds', ['0:00:00', '0:00:01.5', '1:02:03'], [0, 1.5, 3723]],
    ['elapsed hours beyond a day', ['23:59:59', '24:00:01', '30:00:00'], [0, 2, 21_601]],
    ['a time of day over midnight', ['23:59:58', '23:59:59', '00:00:01', '00:01:00'], [0, 1, 3, 62]],
    ['a date and time with the year first', ['2026-07-12 14:03:05', '2026-07-12T14:03:05.25', '2026-07-13 00:00:00'], [0, 0.25, 35_815]],
    ['over the end of February in a leap year', ['2024-02-28 23:59:59', '2024-02-29 00:00:00', '2024-03-01 00:00:00'], [0, 1, 86_401]],
    ['with dots the day stands first', ['31.01.2026 23:59:00', '01.02.2026 00:00:00'], [0, 60]],
    ['a day above twelve tells the order', ['7/13/2026 1:00:00 AM', '7/13/2026 1:00:00 PM'], [0, 43_200]],
    ['noon and midnight in halves', ['7/13/2026 11:59:59 AM', '7/13/2026 12:00:00 PM', '7/14/2026 12:00:00 AM'], [0, 1, 43_201]],
    ['a zone is taken off, so summer time ends without a jump', ['2026-10-25T02:59:59+02:00', '2026-10-25T02:00:00+01:00'], [0, 1]],
    ['universal time', ['2026-07-12T14:03:05Z', '2026-07-12T14:03:06Z'], [0, 1]],
  ])('%s', (_, times, wanted) => {
    expect(seconds(times)).toEqual(wanted);
  });

  test('a day in a column of its own', () => {
    expect(seconds(['23:59:59', '00:00:01'], UNSAID, ['2026-02-03', '2026-02-04'])).toEqual([0, 2]);
  });

  test.each<[string, string, number]>([
    ['ms', '500', 0.5],
    ['µs', '500', 0.0005],
    ['min', '1.5', 90],
    ['h', '0.5', 1800],
    ['m:s', '2:05', 125],
    ['h:m', '2:05', 7500],
  ])('"in %s": %s is %d s', (words, time, wanted) => {
    const writing = timeWriting(words);
    const start = time.includes(':') ? '0:00' : '0';
    expect(writing === null ? null : seconds([start, time], writing)).toEqual([0, wanted]);
  });

  test('what can be read in two ways is asked for, never guessed', () => {
    expect(seconds(['07/12/2026 10:00:00'])).toMatch(/day or the month first: write "in d\/m\/y" or "in m\/d\/y"/);
    expect(seconds(['12:05'])).toMatch(/write "in m:s" or "in h:m"/);
    const said = timeWriting('d/m/y') ?? UNSAID;
    expect(seconds(['07/12/2026 23:59:00', '08/12/2026 00:00:00'], said)).toEqual([0, 60]);
  });

  test.each(['yesterday', '2026-02-30 10:00:00', '10:61:00', '2026-07-12', '', '12:00:00:00'])('"%s" is no time', (time) => {
    expect(seconds([time])).toBe(`"${time}" is not a time`);
  });
});
