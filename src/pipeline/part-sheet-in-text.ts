import { isMap, isScalar, isSeq, type Scalar, type YAMLMap } from 'yaml';
import { FACT_FIELDS, type FactField, type PartFacts } from '../corpus/part-facts/part-facts.ts';
import { isDate } from '../entry/calendar-date.ts';
import type { Correction } from '../entry/entry.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import { readRating } from '../units/read-rating.ts';
import { openYaml, type YamlFault, type YamlPlace } from './open-yaml.ts';

const KEYS: readonly string[] = ['number', 'also written', ...FACT_FIELDS, 'note', 'corrections'];
type CorrectionKey = 'date' | 'where' | 'was' | 'is' | 'why';

/** Reports a fault at an offset of the file. */
type Say = (offset: number, message: string) => void;

/** A number or another spelling that the sheet is for, and where it says so; 1:1 where only the name of the file does. */
export interface NumberClaimed extends YamlPlace {
  readonly spelling: string;
}

/** What a fact sheet states; null where nothing of it could be read. */
export interface PartSheetRead {
  readonly facts: PartFacts | null;
  readonly claimed: readonly NumberClaimed[];
  readonly faults: readonly YamlFault[];
}

/** A text with the offset of its first sign. */
interface TextAt {
  readonly text: string;
  readonly offset: number;
}

/** Reads the text of a fact sheet; a faulty field is reported and left out, the others stand. */
export function partSheetInText(text: string, from: { readonly file: string; readonly hash: string }): PartSheetRead {
  const { map, faults: shut, placeOf } = openYaml(text, { file: from.file, schema: 'failsafe', holds: 'lines like "number: VLR-81C"' });
  if (map === null) return { facts: null, claimed: [], faults: shut };
  const faults: YamlFault[] = [];
  const fields = fieldsOf(map, (offset, message) => {
    faults.push({ message, ...placeOf(offset) });
  });
  const number = fields.texts.get('number') ?? { text: from.file.replace(/^.*\//, '').replace(/\.ya?ml$/i, ''), offset: 0 };
  const stated = FACT_FIELDS.flatMap((field): [FactField, TextAt][] => {
    const found = fields.texts.get(field);
    return found === undefined ? [] : [[field, found]];
  });
  const facts: PartFacts = {
    number: number.text,
    alsoWritten: fields.alsoWritten.map((each) => each.text),
    stated: Object.fromEntries(stated.map(([field, found]) => [field, found.text])),
    note: fields.texts.get('note')?.text ?? null,
    corrections: fields.corrections,
    file: from.file,
    lines: Object.fromEntries(stated.map(([field, found]) => [field, placeOf(found.offset).line])),
    hash: from.hash,
  };
  const claimed = [number, ...fields.alsoWritten].map((each) => ({ spelling: each.text, ...placeOf(each.offset) }));
  return { facts, claimed, faults };
}

interface Fields {
  readonly texts: ReadonlyMap<string, TextAt>;
  readonly alsoWritten: readonly TextAt[];
  readonly corrections: readonly Correction[];
}

function fieldsOf(map: YAMLMap, say: Say): Fields {
  const texts = new Map<string, TextAt>();
  let alsoWritten: readonly TextAt[] = [];
  let corrections: readonly Correction[] = [];
  for (const { key, value } of map.items) {
    const name = isScalar(key) ? String(key.value) : '?';
    const offset = isScalar(key) ? (key.range?.[0] ?? 0) : 0;
    const text = textAt(value);
    if (!KEYS.includes(name)) say(offset, `"${name}" is not a field of a part's fact sheet${didYouMean(name, KEYS)}`);
    else if (name === 'also written') alsoWritten = spellingsIn(value, offset, say);
    else if (name === 'corrections') corrections = correctionsIn(value, offset, say);
    else if (text !== null) texts.set(name, text);
    else say(offset, `"${name}" must be a text`);
  }
  const rating = texts.get('rating');
  if (rating !== undefined) reportRating(rating, say);
  return { texts, alsoWritten, corrections };
}

function textAt(value: unknown): TextAt | null {
  const text = isScalar(value) ? String(value.value).trim() : '';
  return isScalar(value) && text !== '' ? { text, offset: firstSign(value) } : null;
}

function firstSign({ range, type }: Scalar): number {
  return (range?.[0] ?? 0) + (type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE' ? 1 : 0);
}

/** A number without a unit depends on the role, so only what no role could read is a fault. */
function reportRating({ text, offset }: TextAt, say: Say): void {
  const reading = readRating(text, { bareNumber: 'resistance' });
  const fault = reading.remarks.find((remark) => remark.severity === 'error');
  if (fault !== undefined) say(offset + fault.span.start, `The rating "${text}" cannot be read: ${fault.message}`);
}

function spellingsIn(value: unknown, offset: number, say: Say): readonly TextAt[] {
  const items = isSeq(value) ? value.items : [];
  const texts = items.flatMap((item) => textAt(item) ?? []);
  if (!isSeq(value) || texts.length !== items.length)
    say(offset, '"also written" must be a list of spellings, such as [VLR81C, VLR-81C-TR]');
  return texts;
}

function correctionsIn(value: unknown, offset: number, say: Say): readonly Correction[] {
  if (!isSeq(value)) {
    say(offset, '"corrections" must be a list');
    return [];
  }
  return value.items.flatMap((item) => {
    const field = (name: CorrectionKey): string | null => {
      const found: unknown = isMap(item) ? item.get(name) : null;
      return typeof found === 'string' && found.trim() !== '' ? found.trim() : null;
    };
    const [date, where, why] = [field('date'), field('where'), field('why')];
    if (date !== null && isDate(date) && where !== null && why !== null) return [{ date, where, was: field('was'), is: field('is'), why }];
    say(isMap(item) ? (item.range?.[0] ?? offset) : offset, 'A correction needs a date such as 2026-03-14, where (the field) and why');
    return [];
  });
}
