import type { Correction, Entry, Part } from '../../entry/entry.ts';
import { roleOf } from '../../roles/index.ts';
import { readRating } from '../../units/read-rating.ts';
import { ratingDifferences } from '../rating-differences.ts';
import { FACT_FIELDS, type FactField, type PartFacts, type PartFactsByNumber } from './part-facts.ts';

/** A statement of an entry that its part's fact sheet contradicts. */
export interface FactContradiction {
  readonly part: Part;
  readonly field: FactField;
  readonly message: string;
}

/**
 * Completes the parts of an entry from the fact sheets of their numbers: what the entry leaves out comes from the sheet, what it states stays
 * as stated. Corrections of a sheet after the day of publication join those of the entry, where the sheet fed it.
 */
export function feedParts(
  entry: Entry,
  facts: PartFactsByNumber,
): { readonly entry: Entry; readonly contradictions: readonly FactContradiction[] } {
  if (facts.size === 0) return { entry, contradictions: [] };
  const contradictions: FactContradiction[] = [];
  const feeding = new Map<PartFacts, Set<string>>();
  const parts = entry.parts.map((part) => {
    const sheet = part.number === null ? undefined : facts.get(part.number);
    if (sheet === undefined) return part;
    contradictions.push(...contradictionsOf(part, sheet));
    const fed = fedPart(part, sheet);
    const fields = feeding.get(sheet) ?? new Set<string>();
    for (const field of fed.fromFactSheet ?? []) fields.add(field);
    feeding.set(sheet, fields);
    return fed;
  });
  const corrections = [...feeding].flatMap(([sheet, fields]) => correctionsFor(entry, sheet, fields));
  return { entry: { ...entry, parts, corrections: [...entry.corrections, ...corrections] }, contradictions };
}

function fedPart(part: Part, { stated }: PartFacts): Part {
  const rating = part.rating === null && stated.rating !== undefined ? readRating(stated.rating, { bareNumber: bareNumberOf(part) }) : null;
  const fields: FactField[] = FACT_FIELDS.filter((field) => field !== 'rating' && part[field] === null && stated[field] !== undefined);
  if (rating?.ok === true) fields.push('rating');
  if (fields.length === 0) return part;
  const take = (field: Exclude<FactField, 'rating'>): string | null => part[field] ?? stated[field] ?? null;
  return {
    ...part,
    maker: take('maker'),
    package: take('package'),
    technology: take('technology'),
    datasheet: take('datasheet'),
    ...(rating?.ok === true ? { rating: rating.value, evidence: 'datasheet' as const } : {}),
    fromFactSheet: fields,
  };
}

function contradictionsOf(part: Part, sheet: PartFacts): readonly FactContradiction[] {
  return FACT_FIELDS.flatMap((field) => {
    const fact = sheet.stated[field];
    const here = field === 'rating' ? part.rating?.written : part[field];
    if (fact === undefined || here === undefined || here === null || field === 'datasheet') return [];
    const differing =
      field === 'rating' ? ratingDifferences([here, fact], bareNumberOf(part)) : folded(here) === folded(fact) ? [] : [field];
    if (differing.length === 0) return [];
    const line = sheet.lines[field];
    const place = line === undefined ? sheet.file : `${sheet.file}:${String(line)}`;
    const inWords = field === 'rating' ? ` in ${differing.join(', ')}` : '';
    const subject = part.references.join(', ') || part.role;
    return [
      { part, field, message: `${subject}: ${field} ${here} contradicts the fact sheet of ${sheet.number}${inWords}: ${fact} (${place}).` },
    ];
  });
}

/** Corrections of fed fields that came after this entry was published: before that day the page never showed the old value. */
function correctionsFor(entry: Entry, sheet: PartFacts, fields: ReadonlySet<string>): readonly Correction[] {
  const { published } = entry;
  if (published === null) return [];
  return sheet.corrections
    .filter((correction) => fields.has(correction.where) && correction.date > published)
    .map((correction) => ({ ...correction, where: `${sheet.number}, ${correction.where} (fact sheet of the part)` }));
}

function bareNumberOf(part: Part): NonNullable<ReturnType<typeof roleOf>>['bareNumber'] {
  return roleOf(part.role)?.bareNumber ?? null;
}

function folded(text: string): string {
  return text.normalize('NFKC').toLowerCase().replaceAll('x', '×').replaceAll(/[\s-]/gu, '');
}
