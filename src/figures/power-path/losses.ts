import type { PathBlock, PowerPath } from '../../derived/power-path/power-path.ts';
import { isMissing } from '../../values/value.ts';

/** One loss to draw: at a stage, or what is left and not split. */
export interface DrawnLoss {
  /** Stage it belongs to; null for what is not split between stages. */
  readonly stage: string | null;
  readonly watts: number;
  /** What of it is conduction in the named parts, worked out; null where nothing is. */
  readonly conduction: number | null;
  /** Whether `watts` is all that the stage loses; else conduction is all of it that is known. */
  readonly isWhole: boolean;
}

/** From here on a rest is worth a bar, in watts: the last digit that is printed. */
const SHOWN = 0.05;

/**
 * Losses by stage where they are known, else what conduction alone takes there, then the rest of the total. Conduction in a stage whose
 * loss is known stands inside that loss and is not added. Empty where no loss is known.
 */
export function drawnLosses(path: PowerPath): readonly DrawnLoss[] {
  const known = path.blocks.flatMap((block) => stageLoss(block, path.blocks.length === 1));
  if (isMissing(path.loss)) return known;
  const rest = path.loss.nominal - sumOf(known);
  return rest < SHOWN ? known : [...known, { stage: null, watts: rest, conduction: null, isWhole: true }];
}

function stageLoss({ stage, loss, conduction: worked }: PathBlock, isAlone: boolean): readonly DrawnLoss[] {
  const conduction = worked === null || isMissing(worked.loss) ? null : worked.loss.nominal;
  if (!isMissing(loss) && !(isAlone && conduction === null)) return [{ stage, watts: loss.nominal, conduction, isWhole: true }];
  return conduction === null || !isMissing(loss) ? [] : [{ stage, watts: conduction, conduction, isWhole: false }];
}

function sumOf(losses: readonly DrawnLoss[]): number {
  return losses.reduce((sum, { watts }) => sum + watts, 0);
}

/** How many times the scale of the band the losses are drawn at: a power of two that lets the largest fill `room` pixels. */
export function lossScale(losses: readonly Pick<DrawnLoss, 'watts'>[], pixelsPerWatt: number, room: number): number {
  const largest = Math.max(0, ...losses.map(({ watts }) => watts));
  if (largest <= 0) return 1;
  return 2 ** Math.max(0, Math.floor(Math.log2(room / (largest * pixelsPerWatt))));
}

/** Watts of conduction, which is often a few hundredths. */
export function conductionWatts(watts: number): string {
  return watts < 1 ? watts.toFixed(2) : watts.toFixed(1);
}

/** The sentence under the axis. */
export function lossWords(losses: readonly DrawnLoss[], times: number, path: PowerPath): string {
  const scale = times === 1 ? 'at the scale of the band' : `at ${times} times the scale of the band`;
  const open = losses.some(({ conduction }) => conduction !== null) ? '; open bars are conduction alone, worked out' : '';
  if (isMissing(path.loss)) return `Losses, ${scale}${open}`;
  const total = `${path.loss.nominal.toFixed(1)} W`;
  if (losses.every(({ stage }) => stage === null)) return `Loss, ${scale}: ${total} of all stages together, not split between them`;
  if (sumOf(losses) > path.loss.nominal + SHOWN) return `Losses, ${scale}${open}; that is more than the ${total} between input and output`;
  return losses.some(({ stage }) => stage === null)
    ? `Losses, ${scale}${open}; with what is not split they add up to ${total}`
    : `Losses, ${scale}${open}; they add up to ${total}`;
}
