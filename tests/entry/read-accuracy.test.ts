import { describe, expect, it } from 'vitest';
import { readAccuracy } from '../../src/entry/read-accuracy.ts';
import type { Dimension } from '../../src/units/dimension.ts';

function read(text: string, quantity: Dimension = 'voltage'): object | string {
  const result = readAccuracy(text, quantity);
  if (!result.ok) return result.message;
  const { ofReading, ofRange, range, counts, resolution, fixed } = result.accuracy;
  return { ofReading, ofRange, range, counts, resolution, fixed };
}

const NOTHING = { ofReading: 0, ofRange: 0, range: null, counts: 0, resolution: null, fixed: 0 };

describe('an accuracy in the writing of the trade', () => {
  it.each([
    ['0.1 % + 2 digits', { ofReading: 0.001, counts: 2 }],
    ['±(0.5 % + 3)', { ofReading: 0.005, counts: 3 }],
    ['0.05 % rdg + 3 counts, 1 mV', { ofReading: 0.0005, counts: 3, resolution: 0.001 }],
    ['0.08 % rdg + 2 dgt', { ofReading: 0.0008, counts: 2 }],
    ['0.25 % of reading + 0.5 % of range, range 80 V', { ofReading: 0.0025, ofRange: 0.005, range: 80 }],
    ['0.1 % + 5 mV', { ofReading: 0.001, fixed: 0.005 }],
    ['± 20 mV', { fixed: 0.02 }],
  ])('%s', (text, parts) => {
    expect(read(text)).toEqual({ ...NOTHING, ...parts });
  });

  it('a thermometer is stated in degrees or in kelvin', () => {
    expect(read('1.5 °C', 'temperature')).toEqual({ ...NOTHING, fixed: 1.5 });
    expect(read('0.4 % + 1.5 K', 'temperature')).toEqual({ ...NOTHING, ofReading: 0.004, fixed: 1.5 });
  });

  it('a share of a range needs the range', () => {
    expect(read('0.1 % + 0.05 % range')).toContain('add which: "range 60 V"');
  });

  it('what is no accuracy is said with the form that is', () => {
    expect(read('good')).toContain('"good" in "good" is no accuracy');
    expect(read('0.1 % + 5 mA')).toContain('"5 mA"');
  });
});
