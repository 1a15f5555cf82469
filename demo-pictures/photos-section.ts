import type { Callout } from './callouts.ts';
import type { DrawnPicture } from './picture.ts';

/** One photo of an entry as its section is to say it. */
export interface PhotoLines {
  readonly file: string;
  readonly title: string;
  readonly alt: string;
  readonly callouts: readonly Callout[];
  readonly scale: DrawnPicture['scale'];
  /** Distances that the picture shows, for the entry to measure. */
  readonly distances?: readonly MarkedDistance[];
}

/** Two marks of a distance, as fractions of the picture, and the place of insulation that it belongs to. */
export interface MarkedDistance {
  readonly name: string;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly place: string;
}

/** The `photos:` section of an entry, in the way an author writes it. */
export function photosSection(photos: readonly PhotoLines[]): string {
  return `photos:\n${photos.map(photoLines).join('')}`;
}

function photoLines({ file, title, alt, callouts, scale, distances = [] }: PhotoLines): string {
  const marks = callouts.map(({ reference, x, y }) => `${reference}: ${point(x, y, 1)}`);
  return (
    `  - file: ${file}\n` +
    `    title: ${JSON.stringify(title)}\n` +
    `    alt: ${JSON.stringify(alt)}\n` +
    (marks.length === 0 ? '' : `    callouts: { ${marks.join(', ')} }\n`) +
    `    scale: { from: ${point(...scale.from, 2)}, to: ${point(...scale.to, 2)}, length: ${scale.millimetres} mm }\n` +
    (distances.length === 0 ? '' : `    distances: { ${distances.map(distanceWords).join(', ')} }\n`)
  );
}

function distanceWords({ name, from, to, place }: MarkedDistance): string {
  return `${name}: { from: ${point(...from, 2)}, to: ${point(...to, 2)}, place: ${place} }`;
}

const point = (x: number, y: number, places: number): string => `${(x * 100).toFixed(places)} % ${(y * 100).toFixed(places)} %`;

/** Replaces the section in an entry's text, or puts it before its sources; every other byte stays. @throws where the entry has no such place. */
export function withPhotos(text: string, section: string): string {
  const without = text.replace(/^photos:\n(?: .*\n)+\n?/mu, '');
  const at = without.search(/^sources:/mu);
  if (at < 0) throw new Error('the entry has no sources, before which its photos stand');
  return `${without.slice(0, at)}${section}\n${without.slice(at)}`;
}
