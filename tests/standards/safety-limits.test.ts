import { describe, expect, it } from 'vitest';
import { CAPACITOR_VOLTAGES, isCapacitorVoltage } from '../../src/standards/capacitor-voltages.ts';
import { impulseVoltage } from '../../src/standards/safety-capacitors.ts';
import { energyLinesReached } from '../../src/standards/stored-energy-cautions.ts';
import { TOUCH_CURRENT_LIMITS } from '../../src/standards/touch-current.ts';
import { DISCHARGE_RULES, es1CapacitorVoltage } from '../../src/standards/x-capacitor-discharge.ts';

describe('stored energy', () => {
  // Berkeley Lab, Electrical safety manual, tables 2.2.13, 2.3.3, 2.3.5.
  it('is a shock hazard from 100 V and 10 J', () => {
    expect(energyLinesReached(392, 10.2).map((line) => line.hazard)).toEqual(['shock']);
    expect(energyLinesReached(392, 9.2)).toEqual([]);
    expect(energyLinesReached(60, 12)).toEqual([]);
    expect(energyLinesReached(60, 120).map((line) => line.hazard)).toEqual(['burn']);
  });
});

describe('touch current', () => {
  // IEC 60950-1 table 5A, quoted in emc-pstc msg25786; IEC 62368-1 table 4 in a public rendering.
  it('has the limits for equipment without earth', () => {
    const limits = new Map(TOUCH_CURRENT_LIMITS.map((limit) => [limit.id, limit.amperes]));
    expect(limits.get('60950-not-earthed')).toBe(0.00025);
    expect(limits.get('62368-es1')).toBe(0.0005);
  });
});

describe('safety capacitors', () => {
  // IEC 60384-14, https://techoverflow.net/2019/08/07/x1-x2-y1-y2-y4-impulse-withstand-rating-voltage-calculator-iec-60384-14/
  it('stand the impulse of their class, less above 1 µF', () => {
    expect(impulseVoltage('X1', 1e-6)).toBe(4000);
    expect(impulseVoltage('Y1', 2.2e-9)).toBe(8000);
    expect(Math.round(impulseVoltage('X1', 1.5e-6) ?? 0)).toBe(3266);
    expect(Math.round(impulseVoltage('X2', 2.2e-6) ?? 0)).toBe(1685);
    expect(impulseVoltage('X9', 1e-6)).toBeNull();
  });
});

describe('discharge of plug pins', () => {
  // IEC 62368-1 table 5, two public renderings.
  it.each([
    [470e-9, 60],
    [300e-9, 60],
    [170e-9, 75],
    [91e-9, 100],
    [4e-9, 1000],
    [0.1e-9, 25_000],
    [235e-9, 67.5],
  ])('lets %f F keep %f V', (farads, volts) => {
    expect(es1CapacitorVoltage(farads)).toBe(volts);
  });

  it('names every rule and its time', () => {
    expect(new Set(DISCHARGE_RULES.map((rule) => rule.id)).size).toBe(DISCHARGE_RULES.length);
    for (const rule of DISCHARGE_RULES) expect(rule.seconds).toBeGreaterThan(0);
  });
});

describe('capacitor voltages', () => {
  it('are in rising order and know 420 V but not 430 V', () => {
    expect([...CAPACITOR_VOLTAGES.volts].sort((one, other) => one - other)).toEqual(CAPACITOR_VOLTAGES.volts);
    expect(isCapacitorVoltage(420)).toBe(true);
    expect(isCapacitorVoltage(430)).toBe(false);
  });
});
