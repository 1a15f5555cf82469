import { describe, expect, it } from 'vitest';
import { assume } from '../../src/values/assume.ts';
import { EXACT_DIGITS, supportedDigits, writtenDigits } from '../../src/values/supported-digits.ts';

const SOURCE = { title: 'test', section: 'test', standing: 'common practice' } as const;

describe('digits that an interval supports', () => {
  it.each([
    ['7.7 to 11.5 J around 9.6 J: ± 1.9 keeps one decimal', 7.7, 9.6, 11.5, 2],
    ['± 0.5 on 32.05 keeps one decimal', 31.55, 32.05, 32.55, 3],
    ['± 0.2 on 32.05 keeps two decimals', 31.85, 32.05, 32.25, 4],
    ['± 5 on 7 keeps one digit', 2, 7, 12, 1],
    ['no interval, no limit', 5, 5, 5, EXACT_DIGITS],
  ])('%s', (_, low, nominal, high, digits) => {
    expect(supportedDigits(low, nominal, high)).toBe(digits);
  });

  it('counts the digits of the shortest decimal writing', () => {
    expect([1.1, 400, 0.00047, 373.35].map(writtenDigits)).toEqual([2, 1, 2, 5]);
  });
});

describe('an assumption', () => {
  it('carries its reason and source', () => {
    expect(assume('ratio', 0.85, 0.9, 0.95, 'not given', SOURCE)).toMatchObject({
      low: 0.85,
      high: 0.95,
      origin: { evidence: 'assumed', reason: 'not given', source: SOURCE },
    });
  });

  it('refuses numbers out of order, which only the program itself can give', () => {
    expect(() => assume('ratio', 1, 0.9, 1, 'slip', SOURCE)).toThrow(RangeError);
    expect(() => assume('ratio', 0, Number.NaN, 1, 'slip', SOURCE)).toThrow(RangeError);
  });
});
