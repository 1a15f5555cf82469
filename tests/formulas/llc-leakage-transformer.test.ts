import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { llcEquivalentTurnsRatio } from '../../src/formulas/llc/llc-equivalent-turns-ratio.ts';
import { llcGain } from '../../src/formulas/llc/llc-gain.ts';
import { llcGainIntegrated } from '../../src/formulas/llc/llc-gain-integrated.ts';
import { llcGainWithTransformer } from '../../src/formulas/llc/llc-gain-with-transformer.ts';
import { llcMagnetisingFromOpen } from '../../src/formulas/llc/llc-magnetising-from-open.ts';
import { openOverShortInductance } from '../../src/formulas/llc/open-over-short-inductance.ts';

type Complex = readonly [re: number, im: number];

const plus = ([a, b]: Complex, [c, d]: Complex): Complex => [a + c, b + d];
const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const over = ([a, b]: Complex, [c, d]: Complex): Complex => {
  const square = c * c + d * d;
  return [(a * c + b * d) / square, (b * c - a * d) / square];
};

/** A transformer as a T of two equal leakages and what lies between, a capacitor before it and a resistor behind: solved as a network. */
function networkGain(open: number, shorted: number, capacitance: number, load: number, frequency: number): number {
  const between = Math.sqrt(open * (open - shorted));
  const leakage = open - between;
  const omega = 2 * Math.PI * frequency;
  const behind: Complex = [load, omega * leakage];
  const across: Complex = [0, omega * between];
  const parallel = over(times(across, behind), plus(across, behind));
  const before: Complex = [0, omega * leakage - 1 / (omega * capacitance)];
  const middle = over(parallel, plus(before, parallel));
  return Math.hypot(...over(times(middle, [load, 0]), behind));
}

describe('a transformer whose leakage is the resonant inductance', () => {
  it('has the gain of its equivalent tank at every frequency and load, solved as a network', () => {
    const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(2, 12), number(0.3, 3), number(20, 2000), (ratio, frequencyRatio, load) => {
        const [shorted, capacitance] = [118e-6, 22e-9];
        const open = ratio * shorted;
        const transformer = llcGainIntegrated.compute({ ratio: openOverShortInductance.compute({ open, shorted }) });
        const inductanceRatio = llcMagnetisingFromOpen.compute({ open, shorted }) / shorted;
        // The load behind the equivalent turns ratio is smaller by the square of the gain.
        const seen = load * llcEquivalentTurnsRatio.compute({ turnsRatio: 1, gain: transformer }) ** 2;
        const quality = Math.sqrt(shorted / capacitance) / seen;
        const tank = llcGain.compute({ inductanceRatio, quality, frequencyRatio });
        const frequency = frequencyRatio / (2 * Math.PI * Math.sqrt(shorted * capacitance));
        const solved = networkGain(open, shorted, capacitance, load, frequency);
        expect(Math.abs(llcGainWithTransformer.compute({ transformer, tank }) / solved - 1)).toBeLessThan(1e-9);
      }),
      { seed: 4151, numRuns: 300 },
    );
  });
});
