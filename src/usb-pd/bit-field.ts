/** Bits `high` down to `low` of a word, and what one step of their number is worth. */
export interface BitField {
  readonly high: number;
  readonly low: number;
  readonly step: number;
}

function maskOf(field: BitField): number {
  return 2 ** (field.high - field.low + 1) - 1;
}

/** Value of a field in an unsigned 32-bit word. */
export function fieldOf(word: number, field: BitField): number {
  return ((word >>> field.low) & maskOf(field)) * field.step;
}

/** The bits of a value in its place, or null where it is no whole number of steps or does not fit. */
export function placeField(value: number, field: BitField): number | null {
  const steps = value / field.step;
  if (!Number.isInteger(steps) || steps < 0 || steps > maskOf(field)) return null;
  return (steps << field.low) >>> 0;
}
