/** Mean of a function over an interval by the midpoint rule: good to a few parts in 10⁸ for what the tests put in. */
export function meanOver(from: number, to: number, value: (at: number) => number, steps = 20_000): number {
  const width = (to - from) / steps;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) sum += value(from + (step + 0.5) * width);
  return sum / steps;
}

/** Rms of a function over an interval. */
export function rmsOver(from: number, to: number, value: (at: number) => number, steps = 20_000): number {
  return Math.sqrt(meanOver(from, to, (at) => value(at) ** 2, steps));
}
