import { textAdvance, textOutline, type FaceOutlines } from '../src/figures/text-outline.ts';

/** Sets words in a picture; coordinates and size in the unit of the drawing. */
export interface Lettering {
  readonly faces: readonly FaceOutlines[];
}

export interface Words {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly fill: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly opacity?: number;
}

/** Outlines are set at this size and then scaled, since a drawing in millimetres would lose their curves to rounding. */
const SET_AT = 200;

export function letter(lettering: Lettering, words: Words): string {
  const d = textOutline({ text: words.text, faces: lettering.faces, size: SET_AT, x: 0, y: 0, anchor: words.anchor ?? 'middle' });
  const opacity = words.opacity === undefined ? '' : ` opacity="${words.opacity}"`;
  return `<path transform="translate(${mm(words.x)} ${mm(words.y)}) scale(${mm(words.size / SET_AT)})" fill="${words.fill}"${opacity} d="${d}"/>`;
}

/** The largest size at which a line fits into a box, no larger than `most`. */
export function sizeFor(lettering: Lettering, text: string, width: number, most: number): number {
  return Math.min(most, width / Math.max(textAdvance({ text, faces: lettering.faces, size: 1 }), 0.1));
}

/** A number of a drawing in millimetres. */
export function mm(value: number): string {
  return String(Math.round(value * 1e4) / 1e4);
}

/** A rectangle with what else it needs, as markup. */
export function block(x: number, y: number, width: number, height: number, rest: string): string {
  return `<rect x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}" ${rest}/>`;
}
