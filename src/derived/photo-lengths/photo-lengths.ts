import type { Entry, Photo, PhotoDistance } from '../../entry/entry.ts';
import { photoLength } from '../../formulas/geometry/photo-length.ts';
import { tiltForeshortening } from '../../formulas/geometry/tilt-foreshortening.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known, type Source, type Value } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';

/** One distance read out of a photo. */
export interface PhotoLength {
  /** Photo, counted from 1. */
  readonly photo: number;
  readonly name: string;
  /** Id of the place of insulation that it was marked for. */
  readonly place: string | null;
  /** Fractions of width and height. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly length: Known<'length'>;
  /** Distances in pixels and the factor for tilt, that the length was worked with; null where it is withheld. */
  readonly working: { readonly marked: Value<'ratio'>; readonly scale: Value<'ratio'>; readonly tilt: Value<'ratio'> } | null;
}

/** Pixels of a photo. */
interface Pixels {
  readonly width: number;
  readonly height: number;
}

const READING: Source = {
  title: 'Reading of marks in a photo',
  section: 'one mark on a screen of about 1000 pixels',
  standing: 'common practice',
};

/** How far a mark may stand from where it was meant, as a fraction of the picture's longer edge: 1.5 px on a screen of 1000. */
export const READING_ERROR = 0.0015;

/** Rise over run that a line or the known length may have across the line of sight without being seen: 10 %, about 6°. */
export const TILT_SLOPE = 0.1;

/**
 * The distances marked in the photos, worked out with the known length in the same photo. The interval holds the reading of all four marks
 * and the tilt of either line; what lies in another plane is not in it, which is why a photo only indicates.
 *
 * @param sizes pixels of each photo, in the order of the entry; without them across and down cannot be told apart
 */
export function photoLengths(entry: Entry, sizes: readonly (Pixels | null)[]): readonly PhotoLength[] {
  return entry.photos.flatMap((photo, index) => photo.distances.map((distance) => lengthOf(photo, index, distance, sizes[index] ?? null)));
}

function lengthOf(photo: Photo, index: number, { name, place, from, to }: PhotoDistance, size: Pixels | null): PhotoLength {
  const base = { photo: index + 1, name, place, from, to };
  const withheld = (reason: string, need: string): PhotoLength => ({ ...base, length: missing(reason, [need]), working: null });
  if (photo.scale === null) return withheld('the photo has no scale', 'known length in the photo');
  if (size === null) return withheld('the photo was not published', 'photo');
  const marked = pixelsBetween(from, to, size);
  const scale = pixelsBetween(photo.scale.from, photo.scale.to, size);
  if (scale.low <= 0) return withheld('the known length is too short to measure by', 'longer known length');
  const tilt = tiltFactor();
  if (isMissing(tilt)) return { ...base, length: tilt, working: null };
  const reference = factValue(photo.scale.length);
  return { ...base, length: applyFormula(photoLength, { reference, marked, scale, tilt }), working: { marked, scale, tilt } };
}

/** Both ends may be off, each by the reading error along the line. */
function pixelsBetween(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  { width, height }: Pixels,
): Value<'ratio'> {
  const pixels = Math.sqrt(((x2 - x1) * width) ** 2 + ((y2 - y1) * height) ** 2);
  const error = 2 * READING_ERROR * Math.max(width, height);
  const reason = `distance of two marks in pixels, each mark read to ${READING_ERROR * 100} % of the longer edge`;
  return assume('ratio', Math.max(0, pixels - error), pixels, pixels + error, reason, READING);
}

/** The line aslant looks short, so that its true length is more; the known length aslant makes all others seem more. */
function tiltFactor(): Known<'ratio'> {
  const slope = assume('ratio', TILT_SLOPE, TILT_SLOPE, TILT_SLOPE, 'a rise of one in ten goes unseen from above', READING);
  const seen = applyFormula(tiltForeshortening, { slope });
  if (isMissing(seen)) return seen;
  const reason = `either line may rise ${TILT_SLOPE * 100} % towards the camera, which makes it look ${((1 - seen.nominal) * 100).toFixed(1)} % shorter`;
  return assume('ratio', seen.nominal, 1, 1 / seen.nominal, reason, READING);
}
