import type { PowerPath } from '../../derived/power-path/power-path.ts';
import { isMissing } from '../../values/value.ts';

/** One loss to draw: at a stage, or what is left and not split. */
export interface DrawnLoss {
  /** Stage it belongs to; null for what is not split between stages. */
  readonly stage: string | null;
  readonly watts: number;
}

/** Losses by stage where they are known, then the rest of the total. Empty where no loss is known. */
export function drawnLosses(path: PowerPath): readonly DrawnLoss[] {
  const known = path.blocks.flatMap(({ stage, loss }) =>
    isMissing(loss) || path.blocks.length === 1 ? [] : [{ stage, watts: loss.nominal }],
  );
  if (isMissing(path.loss)) return known;
  const rest = path.loss.nominal - known.reduce((sum, { watts }) => sum + watts, 0);
  return rest < 0.05 ? known : [...known, { stage: null, watts: rest }];
}

/** How many times the scale of the band the losses are drawn at: a power of two that lets the largest fill `room` pixels. */
export function lossScale(losses: readonly DrawnLoss[], pixelsPerWatt: number, room: number): number {
  const largest = Math.max(0, ...losses.map(({ watts }) => watts));
  if (largest <= 0) return 1;
  return 2 ** Math.max(0, Math.floor(Math.log2(room / (largest * pixelsPerWatt))));
}

/** The sentence under the axis. */
export function lossWords(losses: readonly DrawnLoss[], times: number, path: PowerPath): string {
  const scale = times === 1 ? 'at the scale of the band' : `at ${times} times the scale of the band`;
  if (isMissing(path.loss)) return `Losses, ${scale}`;
  const total = `${path.loss.nominal.toFixed(1)} W`;
  if (losses.every(({ stage }) => stage === null)) return `Loss, ${scale}: ${total} of all stages together, not split between them`;
  return losses.some(({ stage }) => stage === null)
    ? `Losses, ${scale}; with what is not split they add up to ${total}`
    : `Losses, ${scale}; they add up to ${total}`;
}
