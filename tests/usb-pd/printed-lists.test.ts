import { describe, expect, it } from 'vitest';
import { readOfferList } from '../../src/usb-pd/offer-list.ts';
import { offerWatts } from '../../src/usb-pd/offer-watts.ts';

/** Lists as they stand on labels and in listings, with what they say: how many offers, the most watts, words of a remark. */
const PRINTED: readonly (readonly [string, number, number, string | null])[] = [
  ['5V⎓3A', 1, 15, null],
  ['5V⎓3A / 9V⎓3A / 12V⎓3A / 15V⎓3A / 20V⎓5A / 28V⎓5A (140W Max)', 6, 140, null],
  ['5V⎓3A、9V⎓2.22A、12V⎓1.67A', 3, 20.04, null],
  ['5V⎓3A · 9V⎓2.77A · 12V⎓2.08A', 3, 24.96, null],
  ['5V/3A, 9V/3A, 12V/3A, 15V/3A. 20V/5A', 5, 100, null],
  ['5V/3A 9V/3A 12V/3A 15V/3A 20V/3.25A (65W Max)', 5, 65, null],
  ['5000mV 3000mA, 9000mV 2220mA, 12000mV 1670mA', 3, 20.04, null],
  ['3.3-21V 3A PPS', 1, 60, null],
  ['PPS: 3.3-21V/5A', 1, 100, null],
  ['PPS: 3.3V~5.9V - 3A, 3.3V~11.0V - 2.25A', 2, 20.25, null],
  ['3.3-21V 3.33A', 1, 66.6, 'is not a multiple of 0.05 A'],
];

describe('lists as labels and listings print them', () => {
  it.each(PRINTED)('%s: %d offers, to %d W', (text, count, watts, words) => {
    const { offers, remarks } = readOfferList(text);
    expect(remarks.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(offers).toHaveLength(count);
    expect(Math.max(...offers.map(offerWatts))).toBe(watts);
    if (words !== null) expect(remarks.map(({ message }) => message).join(' ')).toContain(words);
    else expect(remarks.filter(({ severity }) => severity === 'warning')).toEqual([]);
  });
});
