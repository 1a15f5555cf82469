import type { SizedDevice } from '../corpus/size-field.ts';
import { finderScatter } from '../figures/finder-scatter.ts';
import { thinnedPoints } from '../figures/thinned-points.ts';
import { counted } from '../units/counted.ts';

/** Marks of other devices on a sheet's scatter; where there are more, the first of each cell of a grid stands for its neighbours. */
const MOST_MARKS = 150;

/** Rated power over volume of all sheets, this one filled; empty where its own size is not known or no other's is. */
export function sheetScatter(slug: string, devices: readonly SizedDevice[]): string {
  const own = devices.find((device) => device.slug === slug);
  const others = devices.filter((device) => device !== own);
  if (own === undefined || others.length === 0) return '';
  const marks = [...thinnedPoints(others, MOST_MARKS), own].map((device) => ({ ...device, isFound: device === own }));
  const count = counted(others.length, 'other sheet');
  const description = `${own.name} among ${count} with a known size.`;
  const drawn = (size: readonly [number, number], id: string, className: string): string =>
    finderScatter(marks, { volume: null, watts: null }, size, { id, className, description });
  const figure = drawn([640, 360], 'size-field', 'only-sheet') + drawn([328, 300], 'size-field-small', 'only-phone');
  const thinned = marks.length - 1 < others.length ? '; where they lie close, one mark stands for several' : '';
  return `<figure class="beside-scatter">${figure}<figcaption class="note">This device filled, ${count} open${thinned}. Dash-dot lines: equal power density. <a href="/finder/">The finder</a> has the numbers.</figcaption></figure>`;
}
