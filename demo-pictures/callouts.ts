import type { Entry } from '../src/entry/entry.ts';
import type { DrawnPicture } from './picture.ts';

/** Roles worth pointing at, the most telling first; each gets one mark before any gets a second. */
const TELLING = [
  'transformer',
  'cell',
  'bulk-capacitor',
  'primary-switch',
  'pfc-switch',
  'controller',
  'synchronous-rectifier',
  'rectifier-diode',
  'buck-switch',
  'protocol-controller',
  'input-fuse',
  'x-capacitor',
  'optocoupler',
  'pfc-inductor',
  'y-capacitor',
  'inductor',
  'output-capacitor',
  'input-capacitor',
  'bridge-rectifier',
  'common-mode-choke',
  'pfc-diode',
  'connector',
];
const MOST = 12;

/** A part and the point on it, as fractions of the picture. */
export interface Callout {
  readonly reference: string;
  readonly x: number;
  readonly y: number;
}

/** Up to twelve marks on the bodies of a picture, in the order of the part table. */
export function calloutsOf(entry: Entry, { bodies }: DrawnPicture): readonly Callout[] {
  const inTable = entry.parts.flatMap(({ references, role }) => references.map((reference) => ({ reference, role })));
  const drawn = inTable.filter(({ reference }) => bodies.has(reference));
  const firsts = TELLING.flatMap((role) => drawn.filter((part) => part.role === role).slice(0, 1));
  const seconds = TELLING.flatMap((role) => drawn.filter((part) => part.role === role).slice(1, 2));
  const others = TELLING.flatMap((role) => drawn.filter((part) => part.role === role).slice(2));
  const chosen = new Set([...firsts, ...seconds, ...others].slice(0, MOST).map(({ reference }) => reference));
  return drawn.flatMap(({ reference }) => {
    const area = bodies.get(reference);
    if (area === undefined || !chosen.has(reference)) return [];
    return [{ reference, x: area.x + area.width * 0.5, y: area.y + area.height * 0.5 }];
  });
}
