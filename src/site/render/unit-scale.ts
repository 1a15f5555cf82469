/** What one of each shown unit is in the unit that values are held in (SI, degrees Celsius). Prefixes are worked out. */
const PLAIN: Readonly<Record<string, number>> = {
  'cm³': 1e-6,
  'in³': 1.6387064e-5,
  'W/cm³': 1e6,
  'W/in³': 1 / 1.6387064e-5,
  'cm²': 1e-4,
  'mm²': 1e-6,
  g: 1e-3,
  kg: 1,
  Wh: 3600,
  mWh: 3.6,
  Ah: 3600,
  mAh: 3.6,
  min: 60,
  h: 3600,
  '%': 0.01,
  '1': 1,
  in: 0.0254,
};

const PREFIXES: Readonly<Record<string, number>> = { p: 1e-12, n: 1e-9, 'µ': 1e-6, m: 1e-3, c: 1e-2, k: 1e3, M: 1e6, G: 1e9 };
const PREFIXED = /^([pnµmckMG])(V|A|W|VA|Ω|F|H|Hz|s|m|J|C)$/;

/** Factor of a shown unit: a value in SI divided by it is the number to print. */
export function unitFactor(unit: string): number {
  const plain = PLAIN[unit];
  if (plain !== undefined) return plain;
  const match = PREFIXED.exec(unit);
  return match === null ? 1 : (PREFIXES[match[1] ?? ''] ?? 1);
}
