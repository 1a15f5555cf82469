import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import { canonicalText } from '../../src/units/canonical-text.ts';
import { SI_UNITS } from '../../src/units/dimension.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import type { Reading } from '../../src/units/quantity.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';
import { readRating } from '../../src/units/read-rating.ts';
import { readSize } from '../../src/units/read-size.ts';
import { readSupplyInput } from '../../src/units/read-supply-input.ts';
import { LABEL_SPELLINGS } from './label-spellings.ts';
import { MORE_LABEL_SPELLINGS } from './more-label-spellings.ts';
import { MORE_SPELLINGS } from './more-spellings.ts';
import { SPELLINGS } from './spellings.ts';

// The keys of a constant object are the dimensions.
const DIMENSIONS = Object.keys(SI_UNITS) as Dimension[];

function readEveryWay(text: string): readonly Reading<unknown>[] {
  return [
    ...DIMENSIONS.map((dimension) => readQuantity(text, dimension)),
    readRating(text, { bareNumber: null }),
    readRating(text, { bareNumber: 'resistance' }),
    readRating(text, { bareNumber: 'capacitance' }),
    readSize(text),
    readSupplyInput(text),
    readOffers(text),
  ];
}

/** Numbers anywhere in a value that are not numbers a page may print. */
function hasBadNumber(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return false;
  return Object.values(value).some(hasBadNumber);
}

function checkReadings(text: string): void {
  for (const reading of readEveryWay(text)) {
    if (reading.ok) expect(hasBadNumber(reading.value), `a bad number in ${JSON.stringify(reading.value)}`).toBe(false);
    else
      expect(
        reading.remarks.some((remark) => remark.severity === 'error'),
        `refused “${text}” without an error`,
      ).toBe(true);
    for (const { span } of reading.remarks) {
      const isInside = span.start >= 0 && span.start <= span.end && span.end <= text.length;
      expect(isInside, `span ${span.start} to ${span.end} of “${text}”`).toBe(true);
    }
  }
  expect(typeof canonicalText(text)).toBe('string');
}

const GOOD = [...SPELLINGS, ...LABEL_SPELLINGS, ...MORE_SPELLINGS, ...MORE_LABEL_SPELLINGS].map((spelling) => spelling.text);
const PIECES = [
  '±',
  '5',
  '0',
  '.',
  ',',
  '-',
  '~',
  '/',
  ' ',
  'V',
  'm',
  'Ω',
  'µ',
  '×',
  'x',
  '(',
  ')',
  '%',
  '+',
  '0x',
  'PPS',
  'AVS',
  '\u2393',
  '\uD800',
  '\u338C',
  'e',
  ':',
  '10^',
  'max',
  '°',
];

const mutated = fc
  .tuple(
    fc.constantFrom(...GOOD),
    fc.array(fc.tuple(fc.nat(), fc.constantFrom('delete', 'insert', 'double', 'swap'), fc.constantFrom(...PIECES)), {
      minLength: 1,
      maxLength: 4,
    }),
  )
  .map(([text, edits]) => edits.reduce((changed, [place, how, piece]) => mutate(changed, place, how, piece), text));

function mutate(text: string, place: number, how: string, piece: string): string {
  const at = text.length === 0 ? 0 : place % (text.length + 1);
  if (how === 'insert') return text.slice(0, at) + piece + text.slice(at);
  if (how === 'delete') return text.slice(0, at) + text.slice(at + 1);
  if (how === 'double') return text.slice(0, at) + text.slice(Math.max(0, at - 3));
  return text.slice(0, at) + text.charAt(at + 1) + text.charAt(at) + text.slice(at + 2);
}

describe('no text makes a reader throw, print a bad number or point outside the text', () => {
  it('random Unicode', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 60 }), checkReadings), { seed: 20260314, numRuns: 200 });
  });

  it('random pieces of ratings', () => {
    const text = fc.array(fc.constantFrom(...PIECES), { maxLength: 24 }).map((pieces) => pieces.join(''));
    fc.assert(fc.property(text, checkReadings), { seed: 20260314, numRuns: 500 });
  });

  it('good spellings, mutated', () => {
    fc.assert(fc.property(mutated, checkReadings), { seed: 20260314, numRuns: 800 });
  });

  it('texts built to make a backtracking reader slow take no time', () => {
    const hostile = [
      '1/'.repeat(149),
      '1 '.repeat(149),
      '('.repeat(300),
      '±'.repeat(300),
      '1~'.repeat(149),
      '5V '.repeat(99),
      'a'.repeat(300),
      '1,'.repeat(149),
      '- '.repeat(149),
      '4k7'.repeat(99),
    ];
    // Together 20 ms; an exponential reader would not come back before the test runner gives up.
    for (const text of hostile) expect(() => readEveryWay(text)).not.toThrow();
  });
});

describe('length', () => {
  it('refuses more than 300 characters and says so', () => {
    const reading = readRating('5 V '.repeat(80), { bareNumber: null });
    expect(reading.ok).toBe(false);
    expect(reading.remarks[0]?.message).toContain('at most 300');
  });
});
