/** Multiplier letters of EIA-96 as powers of ten. Source: https://1001ferramentas.com/en/tools/eia-96-resistor-format-validator */
const MULTIPLIERS: Readonly<Record<string, number>> = { Z: -3, Y: -2, R: -2, X: -1, S: -1, A: 0, B: 1, H: 1, C: 2, D: 3, E: 4, F: 5 };

/**
 * Resistance in ohms of an EIA-96 marking: index 01 to 96 into the E96 series, then a multiplier letter (39D → 249 kΩ). Null for others.
 * E96 values are 100 × 10^(i/96) rounded (IEC 60063).
 */
export function valueOfEia96Code(code: string): number | null {
  const match = /^(\d{2})([A-Z])$/.exec(code);
  if (match === null) return null;
  const index = Number(match[1]);
  const exponent = MULTIPLIERS[match[2] ?? ''];
  if (index < 1 || index > 96 || exponent === undefined) return null;
  const value = Math.round(100 * 10 ** ((index - 1) / 96));
  return Number(`${value}e${exponent}`);
}
