import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frequencyOfLargestGain } from '../../src/formulas/llc-largest-gain-frequency.ts';
import { llcGainIntegrated } from '../../src/formulas/llc/llc-gain-integrated.ts';
import { llcGainNoLoad } from '../../src/formulas/llc/llc-gain-no-load.ts';
import { llcGain } from '../../src/formulas/llc/llc-gain.ts';
import { applyFormula } from '../../src/values/apply-formula.ts';
import { isMissing } from '../../src/values/value.ts';
import { measuredValue } from '../values/a-quantity.ts';

/** A complex number as real and imaginary part. */
type Complex = readonly [real: number, imaginary: number];

function add([a, b]: Complex, [c, d]: Complex): Complex {
  return [a + c, b + d];
}

function divide([a, b]: Complex, [c, d]: Complex): Complex {
  const size = c ** 2 + d ** 2;
  return [(a * c + b * d) / size, (b * c - a * d) / size];
}

function multiply([a, b]: Complex, [c, d]: Complex): Complex {
  return [a * c - b * d, a * d + b * c];
}

function parallel(one: Complex, other: Complex): Complex {
  return divide(multiply(one, other), add(one, other));
}

/** Gain of the circuit itself: source, capacitor, primary leakage, magnetising inductance, secondary leakage, load. */
function circuitGain(omega: number, capacitance: number, primary: number, magnetising: number, secondary: number, load: number): number {
  const behind: Complex = add([0, omega * secondary], [load, 0]);
  const middle = parallel([0, omega * magnetising], behind);
  const before: Complex = [0, omega * primary - 1 / (omega * capacitance)];
  const [real, imaginary] = multiply(divide(middle, add(before, middle)), divide([load, 0], behind));
  return Math.hypot(real, imaginary);
}

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('gain of an LLC tank', () => {
  it('is that of the circuit worked with complex impedances', () => {
    fc.assert(
      fc.property(share, share, share, (first, second, third) => {
        const [inductanceRatio, quality, frequencyRatio] = [2 + 8 * first, 0.1 + second, 0.5 + 1.5 * third];
        const [resonant, capacitance] = [60e-6, 27e-9];
        const omega = frequencyRatio / Math.sqrt(resonant * capacitance);
        const load = Math.sqrt(resonant / capacitance) / quality;
        const circuit = circuitGain(omega, capacitance, resonant, inductanceRatio * resonant, 0, load);
        expect(Math.abs(llcGain.compute({ inductanceRatio, quality, frequencyRatio }) / circuit - 1)).toBeLessThan(1e-9);
      }),
      { seed: 20_26, numRuns: 200 },
    );
  });

  it('at resonance is 1 with a separate choke, whatever the load', () => {
    for (const quality of [0, 0.3, 1]) expect(llcGain.compute({ inductanceRatio: 5, quality, frequencyRatio: 1 })).toBe(1);
  });

  it('at resonance is above 1 where the leakage, shared by both sides, is the resonant inductance', () => {
    for (const load of [20, 100, 1000]) {
      const [leakage, magnetising, capacitance] = [60e-6, 510e-6, 22e-9];
      const shorted = leakage + (leakage * magnetising) / (leakage + magnetising);
      const ratio = (leakage + magnetising) / shorted;
      const circuit = circuitGain(1 / Math.sqrt(shorted * capacitance), capacitance, leakage, magnetising, leakage, load);
      expect(Math.abs(llcGainIntegrated.compute({ ratio }) / circuit - 1)).toBeLessThan(1e-9);
    }
  });

  it('without load is the same as with a load of quality 0', () => {
    for (const frequencyRatio of [0.6, 1, 1.8]) {
      const loaded = llcGain.compute({ inductanceRatio: 4, quality: 0, frequencyRatio });
      expect(Math.abs(llcGainNoLoad.compute({ inductanceRatio: 4, frequencyRatio }) / loaded - 1)).toBeLessThan(1e-12);
    }
  });

  it('is largest where a scan in small steps finds it', () => {
    for (const [inductanceRatio, quality] of [
      [3, 0.55],
      [4.7, 0.41],
      [8, 0.2],
    ] as const) {
      const at = (frequencyRatio: number): number => llcGain.compute({ inductanceRatio, quality, frequencyRatio });
      const scan = Array.from({ length: 9000 }, (_, step) => 0.1 + step * 1e-4);
      const best = scan.reduce((left, right) => (at(right) > at(left) ? right : left));
      expect(Math.abs(frequencyOfLargestGain(inductanceRatio, quality) - best)).toBeLessThan(2e-4);
    }
  });

  it('over an interval of frequencies that holds its peak reaches the peak', () => {
    const point = (value: number): ReturnType<typeof measuredValue<'ratio'>> => measuredValue('ratio', value, value, value, 3);
    const gain = applyFormula(llcGain, {
      inductanceRatio: point(3),
      quality: point(0.55),
      frequencyRatio: measuredValue('ratio', 0.4, 0.6, 1, 2),
    });
    if (isMissing(gain)) throw new Error(gain.reason);
    const peak = llcGain.compute({ inductanceRatio: 3, quality: 0.55, frequencyRatio: frequencyOfLargestGain(3, 0.55) });
    expect(gain.high).toBe(peak);
    expect(gain.low).toBe(llcGain.compute({ inductanceRatio: 3, quality: 0.55, frequencyRatio: 0.4 }));
  });
});
