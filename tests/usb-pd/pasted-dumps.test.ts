import { describe, expect, it } from 'vitest';
import { readOfferList } from '../../src/usb-pd/offer-list.ts';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import { CAPABILITY_SETS } from './capability-sets.ts';

function hex(word: number): string {
  return word.toString(16).padStart(8, '0');
}

function pairs(word: number): string[] {
  return hex(word).match(/../g) ?? [];
}

function remarksOf(text: string): readonly string[] {
  return readOfferList(text).remarks.map(({ severity, message }) => `${severity} ${message}`);
}

/** Words of a 65 W charger as a kernel trace prints them: two to a number, the first in the lower half of the last. linux-usb list, April 2024. */
const TRACE = '641450004b12c 2d12c0801912c';

describe('words printed with their bytes in another order', () => {
  it.each(CAPABILITY_SETS.map(({ id, words }) => [id, words] as const))('%s, lowest byte first, is asked about', (_id, words) => {
    const text = words.map((word) => pairs(word).toReversed().join('')).join(' ');
    const reading = readOffers(text);
    const [asked] = reading.remarks;
    expect(reading.ok).toBe(false);
    expect(asked?.message).toContain('are these words printed so?');
    expect(asked?.suggestion).toBe(words.map((word) => `0x${hex(word).toUpperCase()}`).join(' '));
  });

  it.each([
    ['912C0A01 D12C0002', 'lower half first'],
    ['010A2C91 02002CD1', 'bytes swapped in each half'],
  ])('%s: %s', (text, order) => {
    expect(readOffers(text).remarks[0]?.message).toContain(order);
    expect(readOffers(text).remarks[0]?.suggestion).toBe('0x0A01912C 0x0002D12C');
  });

  it('does not ask about a list that begins in its middle', () => {
    for (const word of ['0x0002D12C', '0x0004B12C', '0x000641F4', '0xC1A42164', '0xD230968C', '0xEC04B0CA']) {
      expect(remarksOf(word)).toEqual([]);
    }
  });
});

describe('dumps grouped otherwise than in words', () => {
  it.each(CAPABILITY_SETS.map(({ id, words }) => [id, words] as const))('%s as bytes of the wire', (_id, words) => {
    const text = words.flatMap((word) => pairs(word).toReversed()).join(' ');
    expect(readOfferList(text).words).toEqual(words);
    expect(remarksOf(text)[0]).toBe('note read as bytes, lowest byte first, as they go over the wire');
  });

  it.each([
    ['0A 01 91 2C 00 02 D1 2C', 'highest byte first'],
    ['0x2C 0x91 0x01 0x0A 0x2C 0xD1 0x02 0x00', 'lowest byte first'],
    ['61:21:2C:91:01:0A:2C:D1:02:00', 'behind a header of 2 bytes'],
  ])('%s is read as bytes, %s', (text, how) => {
    expect(readOfferList(text).words).toEqual([0x0a01912c, 0x0002d12c]);
    expect(remarksOf(text)[0]).toContain(how);
  });

  it('splits 64-bit numbers without leading zeros, whichever comes first', () => {
    const words = [0x0801912c, 0x0002d12c, 0x0004b12c, 0x00064145];
    expect(readOfferList(TRACE).words).toEqual(words);
    expect(readOfferList(TRACE.split(' ').toReversed().join(' ')).words).toEqual(words);
    expect(readOfferList('0x2d12c0801912c').words).toEqual([0x0801912c, 0x0002d12c]);
    expect(readOfferList(TRACE).offers.map(({ written }) => written)[0]).toBe('0x0801912C');
    expect(remarksOf(TRACE)[0]).toContain('64-bit numbers of two words each, the lower half first and the last number first');
  });

  it('leaves numbers that are no dump alone', () => {
    expect(readOffers('12 15 20 28').ok).toBe(false);
    expect(readOffers('0x0A01912C99').remarks[0]?.message).toContain('has 10 hex digits');
  });
});

describe('zero words', () => {
  it.each(CAPABILITY_SETS.filter(({ words }) => words.includes(0)).map(({ id, words }) => [id, words] as const))(
    'that an EPR message must have draw no remark: %s',
    (_id, words) => {
      expect(remarksOf(words.map((word) => `0x${hex(word)}`).join(' '))).toEqual([]);
    },
  );

  it('in a message without EPR are noted with their place', () => {
    expect(remarksOf('0x0A01912C 0x00000000')).toEqual([
      'note 0x00000000 in place 2 offers nothing: a message without objects of EPR has no unused places; a tester that prints all seven pads its list so',
    ]);
  });

  it('before the other objects are noted too', () => {
    expect(remarksOf('0x0A81912C 0x00000000 0x0002D12C 0x0004B12C 0x000641F4 0x00000000 0x00000000 0x0008C1F4')[0]).toContain('in place 2');
  });

  it('that leave the first object of EPR elsewhere than in place 8 draw a warning there', () => {
    const remarks = remarksOf('0x0A81912C 0x0002D12C 0x0004B12C 0x000641F4 0x00000000 0x0008C1F4 0xD230968C');
    expect(remarks).toContain('warning 0x0008C1F4 stands in place 6; objects of EPR begin at place 8, behind zero words');
  });

  it('alone offer nothing', () => {
    expect(readOfferList('0x00000000')).toMatchObject({ offers: [], words: [0] });
    expect(remarksOf('0x00000000')).toHaveLength(1);
  });
});
