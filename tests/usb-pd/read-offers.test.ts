import { describe, expect, it } from 'vitest';
import { readOfferList } from '../../src/usb-pd/offer-list.ts';
import { nominalPpsVolts, offerWatts } from '../../src/usb-pd/offer-watts.ts';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import { CAPABILITY_SETS } from './capability-sets.ts';

function bodies(text: string): readonly unknown[] {
  const reading = readOffers(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.remarks));
  return reading.value.map((offer) => Object.fromEntries(Object.entries(offer).filter(([key]) => key !== 'written' && key !== 'word')));
}

function remarksOf(text: string): readonly string[] {
  return readOffers(text).remarks.map(
    (remark) => `${remark.severity} ${text.slice(remark.span.start, remark.span.end)}: ${remark.message}`,
  );
}

function printed(word: number): string {
  return word.toString(16).toUpperCase().padStart(8, '0');
}

describe('raw words', () => {
  it.each([
    ['0x0A01912C 0x0002D12C 0x0004B0C8', 3],
    ['0A01912C 0002D12C', 2],
    ['0A01 912C 0002 D12C', 2],
    ['0x0A01_912C, 0x2D12C', 2],
    ['0xA01912C', 1],
    ['PDO1: 0x0A01912C PDO2: 0x0002D12C', 2],
  ])('%s holds %d', (text, count) => {
    expect(bodies(text)).toHaveLength(count);
    expect(bodies(text)[0]).toEqual({ kind: 'fixed', volts: 5, amps: 3 });
  });

  it.each(CAPABILITY_SETS.map((set) => [set.id, set.what, set.words] as const))('message %s, %s', (_id, _what, words) => {
    const offers = words.filter((word) => word !== 0);
    for (const text of [
      words.map((word) => `0x${printed(word)}`).join(' '),
      words.map(printed).join('\n'),
      words.map((word) => `${printed(word).slice(0, 4)} ${printed(word).slice(4)}`).join(', '),
    ]) {
      const reading = readOffers(text);
      expect(reading.ok ? reading.value.map((offer) => offer.word) : reading.remarks).toEqual(offers);
    }
  });

  it('takes the meaning behind a word as the same offer', () => {
    expect(bodies('0x0A01912C (5V 3A) 0x0002D12C 9000mV 3000mA')).toHaveLength(2);
  });

  it('reads words and text in one list', () => {
    expect(bodies('0x0A01912C, 9 V 3 A')).toEqual([
      { kind: 'fixed', volts: 5, amps: 3 },
      { kind: 'fixed', volts: 9, amps: 3 },
    ]);
  });

  it.each([
    ['0x0A01912C99', '0x0A01912C99', 'has 10 hex digits'],
    ['0x0A01912C foo 0x0002D12C', 'foo', 'is no part of an offer'],
    ['0x0A01912G', '0x0A01912G', '“G” is no hex digit'],
    ['0x', '0x', 'hex digits are missing'],
    ['0xF0001234', '0xF0001234', 'USB PD reserves'],
  ])('refuses %s at the piece concerned', (text, at, message) => {
    const reading = readOffers(text);
    const [remark] = reading.remarks.filter((entry) => entry.severity === 'error');
    expect(reading.ok).toBe(false);
    expect(text.slice(remark?.span.start, remark?.span.end)).toBe(at);
    expect(remark?.message).toContain(message);
  });
});

describe('text with a kind', () => {
  it.each([
    ['AVS 15–28 V 140 W', { kind: 'EPR AVS', minVolts: 15, maxVolts: 28, watts: 140 }],
    ['15-28V AVS 140W', { kind: 'EPR AVS', minVolts: 15, maxVolts: 28, watts: 140 }],
    ['EPR AVS 180 W', { kind: 'EPR AVS', minVolts: 15, maxVolts: 36, watts: 180 }],
    ['SPR AVS 9–20 V 3 A / 2.25 A', { kind: 'SPR AVS', ampsTo15V: 3, ampsTo20V: 2.25 }],
    ['SPR AVS 9-15V 3A', { kind: 'SPR AVS', ampsTo15V: 3, ampsTo20V: null }],
    ['AVS 9-20 V 3.25 A', { kind: 'SPR AVS', ampsTo15V: 3.25, ampsTo20V: 3.25 }],
    ['PPS 3.3-21V 5A (power limited)', { kind: 'PPS', minVolts: 3.3, maxVolts: 21, amps: 5, powerLimited: true }],
    ['3.3–21 V 5 A PPS', { kind: 'PPS', minVolts: 3.3, maxVolts: 21, amps: 5, powerLimited: null }],
    ['variable 5-12V 3A', { kind: 'variable', minVolts: 5, maxVolts: 12, amps: 3 }],
    ['battery 3-12V 45W', { kind: 'battery', minVolts: 3, maxVolts: 12, watts: 45 }],
    ['5V 1.5A BC 1.2', { kind: 'plain', volts: 5, amps: 1.5 }],
    ['20 V 65 W', { kind: 'fixed', volts: 20, amps: 3.25 }],
  ])('%s', (text, body) => {
    expect(bodies(text)).toEqual([body]);
  });

  it('reads what follows a heading as that kind', () => {
    expect(bodies('5V 3A; PPS: 3.3-5.9V 3A; 3.3-11V 1.8A')).toMatchObject([
      { kind: 'fixed' },
      { kind: 'PPS', maxVolts: 5.9 },
      { kind: 'PPS', maxVolts: 11, amps: 1.8 },
    ]);
  });

  it('says when it takes a range as PPS', () => {
    expect(remarksOf('3.3-11V 2A')[0]).toContain('is read as PPS');
  });

  it('asks for the kind of a range that may be several', () => {
    expect(remarksOf('5–48 V 5 A')[0]).toContain('needs its kind');
  });

  it.each([
    ['PPS 3.3-21V 3.33A', '3.33 A is not a multiple of 0.05 A'],
    ['PPS 3.35-21V 3A', '3.35 V is not a multiple of 0.1 V'],
    ['5.12 V 3 A', '5.12 V is not a multiple of 0.05 V'],
    ['9 V 2.225 A', '2.225 A is not a multiple of 0.01 A'],
  ])('%s is off the step of its object', (text, message) => {
    expect(remarksOf(text)[0]).toContain(message);
  });

  it('lets 2.25 A of PPS pass', () => {
    expect(remarksOf('PPS 3.3-11V 2.25A')).toEqual([]);
  });
});

describe('printed totals', () => {
  it.each([
    ['5V⎓3A / 20V⎓5A / 28V⎓5A (140W Max)', 140],
    ['5V/3A 20V/3.25A (65W Max)', 65],
    ['65W: 5V 3A, 20V 3.25A', 65],
    ['9V⎓2.22A, 12V⎓1.67A 20W max', 20],
  ])('%s agrees with its offers', (text, watts) => {
    expect(readOfferList(text)).toMatchObject({ total: watts, remarks: [] });
  });

  it('takes watts that repeat one offer as no total', () => {
    expect(readOfferList('5V⎓3A (15W) 9V⎓3A (27W)')).toMatchObject({ total: null, remarks: [] });
  });

  it('speaks up where the offers do not reach it', () => {
    expect(remarksOf('5V 3A, 20V 3.25A (100W max)')).toEqual(['warning 100W max: 100W max is printed, and the offers reach 65 W']);
  });
});

describe('watts of an offer', () => {
  it.each([
    ['12V 1.67A', 20.04],
    ['12V⎓2.08A', 24.96],
    ['28V 5A', 140],
    ['PPS 3.3-21V 5A', 100],
    ['PPS 3.3-11V 3A', 27],
    ['EPR AVS 15-28V 140W', 140],
    ['SPR AVS 9-20V 3A/2.25A', 45],
    ['variable 5-12V 3A', 36],
    ['battery 3-12V 45W', 45],
  ])('%s is %d W', (text, watts) => {
    const reading = readOffers(text);
    expect(reading.ok ? reading.value.map(offerWatts) : reading.remarks).toEqual([watts]);
  });

  it('takes PPS at its nominal voltage', () => {
    // USB PD R3.2 V1.1, Table 10.11: 9 V Prog to 11 V, 15 V Prog to 16 V, 20 V Prog to 21 V; 5 V Prog to 5.9 V in PD 3.0.
    expect([5.9, 11, 16, 21, 20].map(nominalPpsVolts)).toEqual([5, 9, 15, 20, 20]);
  });
});
