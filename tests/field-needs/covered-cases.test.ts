import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FIELD_CASES } from './covered-cases.ts';

/** Numbers of the cases that were collected; the gaps were left out when they were sorted. */
const COLLECTED = {
  P: [1, 2, 4, 5, 7, 8, 10, 11, 12, 14, 15, 17, 18, 19, 20, 21, 24, 25, 27, 28, 29, 30, 31, 32, 34, 35, 37, 39, 40, 43],
  W: [1, 3, 5, 6, 7, 8, 10, 12, 14, 15, 16, 18, 19, 20, 21, 23, 25, 26],
  Q: [1, 2, 3, 4, 5, 7, 8, 9, 11, 12, 17, 18],
  C: [1, 2, 3, 4, 6, 7, 9, 11, 12, 15],
} as const;

test('every collected case stands in the list once', () => {
  const ids = Object.entries(COLLECTED).flatMap(([kind, numbers]) => numbers.map((number) => `${kind}${String(number).padStart(2, '0')}`));
  expect(FIELD_CASES.map(({ id }) => id)).toEqual(ids);
});

test.each(FIELD_CASES)('$id, $about: the test that covers it is there', ({ by }) => {
  expect(by.length).toBeGreaterThan(0);
  for (const each of by) {
    expect(existsSync(each.file), each.file).toBe(true);
    expect(readFileSync(each.file, 'utf8').includes(each.holds), `${each.file} holds "${each.holds}"`).toBe(true);
  }
});
