import type { Part } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';

/** Words in a rating or a technology field that tell what a capacitor is made of, whatever its role usually has. */
const CAPACITOR_WORDS: readonly (readonly [words: RegExp, partClass: string])[] = [
  [/tantal/iu, 'capacitor'],
  [/polymer|oscon|hybrid/iu, 'polymer capacitor'],
  [/ceramic|mlcc|^[cuxyz][0-9]?[a-z0-9][a-z]$/iu, 'ceramic capacitor'],
  [/film|polypropylene|^m?kp$/iu, 'film capacitor'],
  [/electrolytic/iu, 'aluminium electrolytic'],
];

/** Class by which derating policies know a part: that of its role, corrected for capacitors by what their marking says. */
export function partClassOf(part: Part): string {
  const declared = roleOf(part.role)?.partClass ?? '';
  if (!declared.includes('capacitor') && declared !== 'aluminium electrolytic') return declared;
  if (declared === 'safety capacitor') return declared;
  if (part.rating?.marks.some((mark) => mark.kind === 'dielectric') === true) return 'ceramic capacitor';
  const words = wordsOf(part);
  return CAPACITOR_WORDS.find(([pattern]) => words.some((word) => pattern.test(word)))?.[1] ?? declared;
}

/** Technology that a policy may single out: "tantalum". */
export function technologyOf(part: Part): string | null {
  return wordsOf(part).some((word) => /tantal/iu.test(word)) ? 'tantalum' : part.technology;
}

function wordsOf(part: Part): readonly string[] {
  const marks = (part.rating?.marks ?? []).filter((mark) => mark.kind === 'technology' || mark.kind === 'word').map((mark) => mark.text);
  return part.technology === null ? marks : [part.technology, ...marks];
}
