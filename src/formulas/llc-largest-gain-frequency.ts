const STEPS = 60;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Switching over resonant frequency at which the gain of an LLC tank with a separate choke is largest, by golden-section search
 * between the pole of the unloaded tank and resonance (first-harmonic approximation, UCC25600, eq. 8). Below it the
 * half bridge sees a capacitive load and loses its soft switching.
 *
 * @param inductanceRatio magnetising over resonant inductance
 * @param quality quality factor; 0 gives the pole of the unloaded tank
 */
export function frequencyOfLargestGain(inductanceRatio: number, quality: number): number {
  let low = 1 / Math.sqrt(inductanceRatio + 1);
  let high = 1;
  for (let step = 0; step < STEPS; step += 1) {
    const left = high - GOLDEN * (high - low);
    const right = low + GOLDEN * (high - low);
    if (inverseGainSquared(left, inductanceRatio, quality) < inverseGainSquared(right, inductanceRatio, quality)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

function inverseGainSquared(frequencyRatio: number, inductanceRatio: number, quality: number): number {
  const squared = frequencyRatio ** 2;
  const real = ((inductanceRatio + 1) * squared - 1) / (inductanceRatio * squared);
  const imaginary = ((squared - 1) * quality) / frequencyRatio;
  return real ** 2 + imaginary ** 2;
}
