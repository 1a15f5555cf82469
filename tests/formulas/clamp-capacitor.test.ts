import { describe, expect, it } from 'vitest';
import { clampCapacitorPeakVoltage } from '../../src/formulas/active-clamp/clamp-capacitor-peak-voltage.ts';

/** The loop of leakage and clamp capacitor over one off-time, by the midpoint rule: voltage at its end and highest voltage. */
function clampLoop(
  start: number,
  { reflected, peak, leakage, capacitance, off }: Readonly<Record<'reflected' | 'peak' | 'leakage' | 'capacitance' | 'off', number>>,
) {
  const steps = 20_000;
  const step = off / steps;
  let current = peak;
  let volts = start;
  let highest = start;
  for (let index = 0; index < steps; index += 1) {
    const middleCurrent = current + ((reflected - volts) / leakage) * (step / 2);
    const middleVolts = volts + (current / capacitance) * (step / 2);
    current += ((reflected - middleVolts) / leakage) * step;
    volts += (middleCurrent / capacitance) * step;
    highest = Math.max(highest, volts);
  }
  return { end: volts, highest };
}

describe('the clamp capacitor of an active clamp, its loop integrated over the off-time', () => {
  it.each([
    ['a capacitor that swings for half a period', 330e-9, 200e3],
    ['a large one, which only carries the drop of the leakage', 10e-6, 200e3],
    ['a small one, which swings for most of a period', 140e-9, 200e3],
  ])('%s', (_, capacitance, frequency) => {
    const loop = { reflected: 120, peak: 3, leakage: 2e-6, capacitance, off: 0.6 / frequency };
    // In steady operation the capacitor ends where it began: its charge is balanced.
    let [low, high] = [0, 400];
    for (let round = 0; round < 50; round += 1) {
      const start = (low + high) / 2;
      if (clampLoop(start, loop).end > start) low = start;
      else high = start;
    }
    const { reflected, peak, leakage } = loop;
    const closed = clampCapacitorPeakVoltage.compute({ reflected, peak, leakage, capacitance, share: 0.6, frequency });
    // Room for the midpoint rule with 20 000 steps.
    expect(Math.abs(closed / clampLoop((low + high) / 2, loop).highest - 1)).toBeLessThan(1e-6);
  });

  it('has no steady state where leakage and capacitor swing for a whole period', () => {
    const at = { reflected: 120, peak: 3, leakage: 2e-6, capacitance: 60e-9, share: 0.6, frequency: 200e3 };
    expect(clampCapacitorPeakVoltage.compute(at)).toBeNaN();
  });
});
