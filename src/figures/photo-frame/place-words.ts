import { zoneAt } from './frame-size.ts';

/** A place in a photo as an entry writes it, "42.1 % 61.0 %", with its zone. @param x, y fractions of width and height */
export function placeWords(x: number, y: number): { readonly place: string; readonly zone: string } {
  const percent = (fraction: number): string => `${(Math.min(1, Math.max(0, fraction)) * 100).toFixed(1)} %`;
  return { place: `${percent(x)} ${percent(y)}`, zone: zoneAt(x, y) };
}
