import { scaleLinear } from 'd3-scale';

/** A time axis in the unit that suits its length. */
export interface TimeAxis {
  /** Seconds at its right end. */
  readonly end: number;
  readonly unit: 's' | 'min' | 'h';
  readonly ticks: readonly { readonly at: number; readonly words: string }[];
}

const SECONDS = { s: 1, min: 60, h: 3600 } as const;

/** Seconds up to three minutes, minutes up to three hours, else hours; some six ticks. */
export function timeAxis(duration: number): TimeAxis {
  const end = duration > 0 ? duration : 1;
  const unit = end <= 180 ? 's' : end <= 3 * 3600 ? 'min' : 'h';
  const scale = scaleLinear([0, end / SECONDS[unit]], [0, 1]);
  const words = scale.tickFormat(6);
  return { end, unit, ticks: scale.ticks(6).map((at) => ({ at: at * SECONDS[unit], words: words(at) })) };
}
