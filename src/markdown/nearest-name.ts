import { nearestWord } from '../entry/nearest-word.ts';

/** Ends a message: `; did you mean "density"?`, or nothing where no name is near. */
export function didYouMean(written: string, names: Iterable<string>): string {
  const nearest = nearestWord(written, names);
  return nearest === null ? '' : `; did you mean "${nearest}"?`;
}
