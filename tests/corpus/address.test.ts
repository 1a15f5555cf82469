import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makerAddress, pageAddress, partAddress } from '../../src/corpus/address.ts';

const SEED = 20260314;

/** One of the given ASCII characters. */
function oneOf(characters: string): fc.Arbitrary<string> {
  return fc.constantFrom(...Array.from(characters));
}

describe('the address of a part number', () => {
  it.each([
    ['OG7014', 'og7014'],
    ['1N4007', '1n4007'],
    ['GN190-65', 'gn190-65'],
    ['KXE-82', 'kxe-82'],
  ])('is the number in small letters where it is written as usual: %s', (number, address) => {
    expect(partAddress(number)).toBe(address);
  });

  it('keeps spellings apart that a file system would confuse', () => {
    const spellings = ['OC4082', 'oc4082', 'Oc4082', 'OC-4082', 'OC 4082', 'OC/4082', 'OC.4082'];
    expect(new Set(spellings.map(partAddress)).size).toBe(spellings.length);
  });

  it('never leaves its folder', () => {
    for (const number of ['..', '.', '/', '../x', '\\', '']) expect(partAddress(number)).toMatch(/^[a-z0-9~.+-]+$/);
    for (const number of ['..', '.', '.HIDDEN', '_X']) expect(partAddress(number)).not.toMatch(/^[._]/);
  });

  it('is different for any two different numbers, in small letters, and short enough for a file name', () => {
    const text = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.string({ unit: oneOf('aAbB1-~._/ 4'), maxLength: 12 }));
    fc.assert(
      fc.property(text, text, (one, other) => {
        for (const addressOf of [partAddress, makerAddress]) {
          expect(addressOf(one)).toMatch(/^[a-z0-9~.+-]{1,120}$/);
          expect(addressOf(one) === addressOf(other)).toBe(one === other);
        }
      }),
      { seed: SEED, numRuns: 3000 },
    );
  });

  it('is different within every set of near spellings', () => {
    const near = fc.string({ unit: oneOf('aA-~+&47. '), minLength: 0, maxLength: 7 });
    fc.assert(
      fc.property(fc.uniqueArray(near, { minLength: 2, maxLength: 400 }), (texts) => {
        expect(new Set(texts.map(partAddress)).size).toBe(texts.length);
        expect(new Set(texts.map(makerAddress)).size).toBe(texts.length);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('is never the address of a further page of a list', () => {
    const text = fc.oneof(fc.string({ unit: 'binary', maxLength: 150 }), fc.string({ unit: oneOf('PAGEpage~1234'), maxLength: 8 }));
    fc.assert(
      fc.property(text, fc.integer({ min: 2, max: 5000 }), (number, page) => {
        expect(partAddress(number)).not.toBe(pageAddress(page));
        expect(makerAddress(number)).not.toBe(pageAddress(page));
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it('of an over-long number keeps its beginning readable and still tells two apart', () => {
    const long = 'A'.repeat(150);
    expect(partAddress(`${long}1`)).toHaveLength(77);
    expect(partAddress(`${long}1`)).toMatch(/^a{60}~/);
    expect(partAddress(`${long}1`)).not.toBe(partAddress(`${long}2`));
  });
});

describe('the address of a maker', () => {
  it.each([
    ['Ostrel', 'ostrel'],
    ['Kiln Lane', 'kiln-lane'],
    ['Pike & Lade', 'pike-+-lade'],
  ])('is the name in small letters where it is written as usual: %s', (name, address) => {
    expect(makerAddress(name)).toBe(address);
  });

  it('keeps a name in capitals apart from the same name in small letters', () => {
    expect(new Set(['Ostrel', 'OSTREL', 'ostrel'].map(makerAddress)).size).toBe(3);
  });
});
