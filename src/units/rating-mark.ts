import { canonicalDielectric } from './dielectric-code.ts';
import type { RatingMark } from './quantity.ts';

/** Words for what a part is made of, with the spelling that is kept. */
const TECHNOLOGIES: Readonly<Record<string, string>> = {
  polymer: 'polymer',
  poly: 'polymer',
  electrolytic: 'electrolytic',
  elko: 'electrolytic',
  hybrid: 'hybrid',
  ceramic: 'ceramic',
  mlcc: 'MLCC',
  film: 'film',
  tantalum: 'tantalum',
  gan: 'GaN',
  sic: 'SiC',
  si: 'Si',
  silicon: 'Si',
  schottky: 'Schottky',
  mkp: 'MKP',
  mkt: 'MKT',
  mpp: 'MPP',
  mov: 'MOV',
  ntc: 'NTC',
  ptc: 'PTC',
  lithium: 'lithium',
  'li-ion': 'Li-ion',
  'li-po': 'Li-Po',
  lifepo4: 'LiFePO4',
};

/** Words that only join others and carry nothing. */
const FILLERS: ReadonlySet<string> = new Set([
  'rated',
  'at',
  'rating',
  'class',
  'in',
  'each',
  'per',
  'of',
  'with',
  'and',
  'or',
  'the',
  'a',
  'safety',
  'type',
]);

const CLASS_SUFFIX = /^([xy][1-4])(?:-(?:rated|class|cap|capacitor|safety))?$/i;

/** What a word in a rating says; null for a word that only joins others. */
export function markOfWord(word: string): Pick<RatingMark, 'kind' | 'text'> | null {
  const lower = word.toLowerCase();
  if (FILLERS.has(lower)) return null;
  const safety = CLASS_SUFFIX.exec(word);
  if (safety !== null) return { kind: 'safety class', text: (safety[1] ?? word).toUpperCase() };
  const dielectric = word.length === 3 ? canonicalDielectric(word) : null;
  if (dielectric !== null) return { kind: 'dielectric', text: dielectric };
  const technology = Object.hasOwn(TECHNOLOGIES, lower) ? TECHNOLOGIES[lower] : undefined;
  return technology === undefined ? { kind: 'word', text: word } : { kind: 'technology', text: technology };
}
