import { describe, expect, it } from 'vitest';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import type { OfferBody } from '../../src/usb-pd/offer.ts';
import type { Quantity, Reading, ReadingRemark, Size, SupplyInput } from '../../src/units/quantity.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';
import { readRating } from '../../src/units/read-rating.ts';
import { readSize } from '../../src/units/read-size.ts';
import { readSupplyInput } from '../../src/units/read-supply-input.ts';
import { LABEL_SPELLINGS } from './label-spellings.ts';
import { MORE_LABEL_SPELLINGS } from './more-label-spellings.ts';
import { MORE_SPELLINGS } from './more-spellings.ts';
import type { Spelling } from './spelling.ts';
import { SPELLINGS } from './spellings.ts';

/** What any of the readers found, on one form. */
interface Found {
  readonly quantities: readonly Quantity[];
  readonly count: number;
  readonly marks: readonly string[];
  readonly hertz: readonly number[];
  readonly millimetres: readonly number[];
  readonly offers: readonly OfferBody[];
  readonly kind: 'AC' | 'DC' | null;
}

const NOTHING: Found = { quantities: [], count: 1, marks: [], hertz: [], millimetres: [], offers: [], kind: null };

function read(spelling: Spelling): { found: Found | null; remarks: readonly ReadingRemark[] } {
  const { text, field } = spelling;
  if (field.as === 'quantity') return found(readQuantity(text, field.of), (value) => ({ quantities: [value] }));
  if (field.as === 'size') return found(readSize(text), ofSize);
  if (field.as === 'supply input') return found(readSupplyInput(text), ofInput);
  if (field.as === 'offers') return found(readOffers(text), (offers) => ({ offers }));
  const bareNumber = 'bareNumber' in field ? field.bareNumber : null;
  return found(readRating(text, { bareNumber }), (rating) => ({
    quantities: rating.quantities,
    count: rating.count,
    marks: rating.marks.map((mark) => mark.text),
  }));
}

function found<T>(reading: Reading<T>, part: (value: T) => Partial<Found>): { found: Found | null; remarks: readonly ReadingRemark[] } {
  return { found: reading.ok ? { ...NOTHING, ...part(reading.value) } : null, remarks: reading.remarks };
}

function ofSize(size: Size): Partial<Found> {
  const lengths = size.shape === 'box' ? size.edges : [size.diameter, size.height];
  return { millimetres: lengths.map((length) => length.nominal * 1000) };
}

function ofInput(input: SupplyInput): Partial<Found> {
  const extra = [input.current, input.power].filter((quantity) => quantity !== null);
  return { quantities: [input.voltage, ...extra], hertz: input.frequencies.map((frequency) => frequency.nominal), kind: input.kind };
}

/** Equal but for the last binary digits of a multiplication: nothing that a writing could tell. */
function same(actual: number | null | undefined, expected: number): boolean {
  return actual != null && Math.abs(actual - expected) <= 1e-12 * Math.max(Math.abs(expected), 1e-15);
}

function checkQuantities(spelling: Spelling, quantities: readonly Quantity[]): void {
  for (const [dimension, expected] of Object.entries(spelling.says ?? {})) {
    const quantity = quantities.find((candidate) => candidate.dimension === dimension);
    const isSame =
      typeof expected === 'number'
        ? same(quantity?.nominal, expected)
        : same(quantity?.low, expected[0]) && same(quantity?.high, expected[1]);
    expect(isSame, `${dimension} of “${spelling.text}”: ${JSON.stringify(quantity)}, expected ${String(expected)}`).toBe(true);
  }
}

function numbersOf(offer: OfferBody): readonly number[] {
  if (offer.kind === 'fixed' || offer.kind === 'plain') return [offer.volts, offer.amps];
  if (offer.kind === 'SPR AVS') return [offer.ampsTo15V, offer.ampsTo20V ?? 0];
  const last = offer.kind === 'battery' || offer.kind === 'EPR AVS' ? offer.watts : offer.amps;
  return [offer.minVolts, offer.maxVolts, last];
}

function checkFound(spelling: Spelling, value: Found): void {
  checkQuantities(spelling, value.quantities);
  if (spelling.count !== undefined) expect(value.count).toBe(spelling.count);
  if (spelling.marks !== undefined) expect(value.marks).toEqual(spelling.marks);
  if (spelling.hertz !== undefined) expect(value.hertz).toEqual(spelling.hertz);
  if (spelling.millimetres !== undefined) {
    expect(value.millimetres).toHaveLength(spelling.millimetres.length);
    for (const [index, expected] of spelling.millimetres.entries()) expect(same(value.millimetres[index], expected)).toBe(true);
  }
  if (spelling.offers !== undefined) expect(value.offers.map(numbersOf)).toEqual(spelling.offers);
  if (spelling.waveform !== undefined) {
    const said = value.kind ?? value.quantities.find((quantity) => quantity.dimension === 'voltage')?.waveform;
    expect(said).toBe(spelling.waveform);
  }
}

function checkRemark(spelling: Spelling, remarks: readonly ReadingRemark[]): void {
  const { remark } = spelling;
  if (remark === undefined) {
    expect(remarks.filter((entry) => entry.severity === 'error')).toEqual([]);
    return;
  }
  const made = remarks.find((entry) => entry.message.includes(remark.says));
  expect(made, `remark “${remark.says}” among ${JSON.stringify(remarks)}`).toBeDefined();
  expect(made?.severity).toBe(remark.severity);
  expect(spelling.text.slice(made?.span.start, made?.span.end).trim()).toBe(remark.at);
  if (remark.suggests !== undefined) expect(made?.suggestion).toBe(remark.suggests);
}

describe.each([
  ['spellings seen in the field', [...SPELLINGS, ...LABEL_SPELLINGS]],
  ['more of the same kind', [...MORE_SPELLINGS, ...MORE_LABEL_SPELLINGS]],
])('%s', (_, spellings) => {
  it.each(spellings.map((spelling) => [spelling.text, spelling.field.as, spelling] as const))('“%s” as %s', (_text, _as, spelling) => {
    const { found: value, remarks } = read(spelling);
    expect(value === null, `refused: ${JSON.stringify(remarks)}`).toBe(spelling.remark?.severity === 'error');
    if (value !== null) checkFound(spelling, value);
    checkRemark(spelling, remarks);
  });
});
