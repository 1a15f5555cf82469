import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LAYOUTS } from '../../src/usb-pd/object-layouts.ts';
import { objectOfOffer, offerOfObject } from '../../src/usb-pd/offer-of-object.ts';
import { decodeObject, encodeObject } from '../../src/usb-pd/power-data-object.ts';
import { WORD_SOURCES, WORD_VECTORS } from './word-vectors.ts';

function hex(word: number): string {
  return `0x${word.toString(16).toUpperCase().padStart(8, '0')}`;
}

describe('words printed by devices, firmware and tests decode field by field', () => {
  it.each(WORD_VECTORS.map((vector) => [hex(vector.word), WORD_SOURCES[vector.source], vector] as const))(
    '%s (%s)',
    (_word, _source, { word, object }) => {
      expect(decodeObject(word)).toEqual(object);
      expect(encodeObject(object)).toBe(word);
    },
  );
});

describe('decoding and encoding are inverse', () => {
  it('for every 32-bit word', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffffff }), (word) => {
        expect(encodeObject(decodeObject(word))).toBe(word);
      }),
      { seed: 20260314, numRuns: 20_000 },
    );
  });

  it('for every single bit and every pair of type bits', () => {
    for (let bit = 0; bit < 32; bit += 1) {
      for (const type of [0, 0x40000000, 0x80000000, 0xc0000000, 0xd0000000, 0xe0000000, 0xf0000000]) {
        const word = (type | (1 << bit)) >>> 0;
        expect(encodeObject(decodeObject(word))).toBe(word);
      }
    }
  });

  it('and no bit of a layout belongs to two fields or to none', () => {
    for (const [kind, layout] of Object.entries(LAYOUTS)) {
      const bits = Object.values(layout).flatMap((field) =>
        Array.from({ length: field.high - field.low + 1 }, (_, index) => field.low + index),
      );
      const size = ['fixed', 'battery', 'variable'].includes(kind) ? 30 : 28;
      expect(
        bits.toSorted((one, other) => one - other),
        kind,
      ).toEqual(Array.from({ length: size }, (_, index) => index));
    }
  });
});

describe('traps that other decoders fell into', () => {
  it('takes bit 27 and not bit 29 as the power-limited flag of a PPS object', () => {
    expect(decodeObject(0xc9a43264)).toMatchObject({ kind: 'pps', powerLimited: 1 });
    expect(decodeObject(0xc1a42164)).toMatchObject({ kind: 'pps', powerLimited: 0 });
  });

  it('reads seven bits of PPS current; bit 7 is reserved', () => {
    expect(decodeObject(0xc1a421e4)).toMatchObject({ current_mA: 5000, reserved7: 1 });
  });

  it('gives the highest voltage of an EPR AVS object as the highest, in nine bits', () => {
    expect(decodeObject(0xd3c096f0)).toMatchObject({ kind: 'eprAvs', max_mV: 48_000, min_mV: 15_000, pdp_W: 240 });
  });

  it('numbers EPR AVS 1 and SPR AVS 2 among the augmented kinds', () => {
    expect(decodeObject(0xd230968c).kind).toBe('eprAvs');
    expect(decodeObject(0xe00320c8).kind).toBe('sprAvs');
  });

  it('puts the current to 15 V of SPR AVS into bits 19:10', () => {
    // The source's comment has the two currents the other way round; a captured 0xEC04B0CA (15 V 3.00 A, 20 V 2.02 A) settles it.
    expect(decodeObject(0xe00515f4)).toMatchObject({ current15V_mA: 3250, current20V_mA: 5000 });
    expect(decodeObject(0xec04b0ca)).toMatchObject({ current15V_mA: 3000, current20V_mA: 2020, peak: 3 });
  });

  it('takes battery as type 01 and variable as type 10', () => {
    expect(decodeObject(0x4f00f0b4).kind).toBe('battery');
    expect(decodeObject(0x8f01912c).kind).toBe('variable');
  });

  it('stays unsigned where bit 31 is set', () => {
    const word = encodeObject(decodeObject(0xc1a42164));
    expect(word).toBeGreaterThan(0);
    expect(decodeObject(0xc1a42164 | 0)).toEqual(decodeObject(0xc1a42164));
  });

  it('takes a zero word as filler', () => {
    expect(decodeObject(0)).toEqual({ kind: 'empty' });
  });
});

describe('values that an object cannot carry', () => {
  it.each([
    [{ kind: 'PPS', minVolts: 3.3, maxVolts: 21, amps: 3.33, powerLimited: null }],
    [{ kind: 'fixed', volts: 5, amps: 10.24 }],
    [{ kind: 'fixed', volts: 60, amps: 1 }],
    [{ kind: 'EPR AVS', minVolts: 15, maxVolts: 28, watts: 300 }],
  ] as const)('%j has no word', (offer) => {
    const object = objectOfOffer(offer);
    expect(object === null ? null : encodeObject(object)).toBeNull();
  });

  it('a plain output sends no object', () => {
    expect(objectOfOffer({ kind: 'plain', volts: 5, amps: 2 })).toBeNull();
  });
});

describe('offers and objects say the same', () => {
  it.each(WORD_VECTORS.map((vector) => [hex(vector.word), vector.object] as const))('%s', (_word, object) => {
    const offer = offerOfObject(object);
    if (offer === null) {
      expect(object.kind).toBe('reserved');
      return;
    }
    const again = objectOfOffer(offer);
    expect(again === null ? null : offerOfObject(again)).toEqual(offer);
  });
});
