import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isMap, isScalar, isSeq, LineCounter, parseDocument, type YAMLMap } from 'yaml';
import { FACT_FIELDS, type FactField, type PartFacts } from '../corpus/part-facts/part-facts.ts';
import type { Correction } from '../entry/entry.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import { readRating } from '../units/read-rating.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { readText } from './read-text.ts';
import { byText } from './text-order.ts';

const KEYS: readonly string[] = ['number', 'also written', ...FACT_FIELDS, 'note', 'corrections'];
type CorrectionKey = 'date' | 'where' | 'was' | 'is' | 'why';

/** Reports a fault at an offset of the file. */
type Say = (offset: number, message: string) => void;

/** Reads the fact sheets `parts/<number>.yaml` of a content folder; a sheet with a fault in it still gives what could be read. */
export function readPartFacts(content: string): { readonly facts: readonly PartFacts[]; readonly findings: readonly FileFinding[] } {
  const folder = join(content, 'parts');
  if (!existsSync(folder)) return { facts: [], findings: [] };
  const findings: FileFinding[] = [];
  const facts: PartFacts[] = [];
  for (const name of readdirSync(folder)
    .filter((each) => !each.startsWith('.'))
    .sort(byText)) {
    const file = `parts/${name}`;
    if (!/\.ya?ml$/i.test(name)) {
      findings.push({
        file,
        finding: pipelineFinding('stray-file', `${file} is no fact sheet; those are written in files like parts/VLR-81C.yaml`),
      });
      continue;
    }
    const sheet = readSheet(join(folder, name), file, findings);
    if (sheet !== null) facts.push(sheet);
  }
  reportTwice(facts, findings);
  return { facts, findings };
}

function readSheet(path: string, file: string, findings: FileFinding[]): PartFacts | null {
  const read = readText(path);
  if (!read.ok) {
    findings.push({ file, finding: read.finding });
    return null;
  }
  const lines = new LineCounter();
  const document = parseDocument(read.text, { lineCounter: lines, schema: 'failsafe', merge: false });
  const say: Say = (offset, message) => {
    const { line, col } = lines.linePos(offset);
    findings.push({ file, finding: pipelineFinding('part-sheet-invalid', message, { in: 'file', line, column: col }) });
  };
  for (const error of document.errors) say(error.pos[0], `${file} is not valid YAML: ${error.message.split('\n', 1)[0] ?? ''}`);
  if (document.errors.length > 0) return null;
  if (!isMap(document.contents)) {
    say(0, `${file} must hold lines like "number: VLR-81C"`);
    return null;
  }
  return sheetOf(document.contents, { file, hash: read.hash, lines }, say);
}

function sheetOf(map: YAMLMap, from: { readonly file: string; readonly hash: string; readonly lines: LineCounter }, say: Say): PartFacts {
  const texts = new Map<string, { readonly text: string; readonly offset: number }>();
  let alsoWritten: readonly string[] = [];
  let corrections: readonly Correction[] = [];
  for (const { key, value } of map.items) {
    const name = isScalar(key) ? String(key.value) : '?';
    const offset = isScalar(key) ? (key.range?.[0] ?? 0) : 0;
    if (!KEYS.includes(name)) say(offset, `"${name}" is not a field of a part's fact sheet${didYouMean(name, KEYS)}`);
    else if (name === 'also written') alsoWritten = textList(value, offset, say);
    else if (name === 'corrections') corrections = correctionsIn(value, offset, say);
    else if (isScalar(value) && String(value.value).trim() !== '')
      texts.set(name, { text: String(value.value).trim(), offset: value.range?.[0] ?? offset });
    else say(offset, `"${name}" must be a text`);
  }
  const rating = texts.get('rating');
  if (rating !== undefined) reportRating(rating.text, rating.offset, say);
  const stated = FACT_FIELDS.flatMap((field): [FactField, string][] => {
    const found = texts.get(field);
    return found === undefined ? [] : [[field, found.text]];
  });
  const linesOf = stated.map(([field]) => [field, from.lines.linePos(texts.get(field)?.offset ?? 0).line] as const);
  return {
    number: texts.get('number')?.text ?? from.file.replace(/^.*\//, '').replace(/\.ya?ml$/i, ''),
    alsoWritten,
    stated: Object.fromEntries(stated),
    note: texts.get('note')?.text ?? null,
    corrections,
    file: from.file,
    lines: Object.fromEntries(linesOf),
    hash: from.hash,
  };
}

/** A number without a unit depends on the role, so only what no role could read is a fault. */
function reportRating(text: string, offset: number, say: Say): void {
  const reading = readRating(text, { bareNumber: 'resistance' });
  const fault = reading.remarks.find((remark) => remark.severity === 'error');
  if (fault !== undefined) say(offset + fault.span.start, `The rating "${text}" cannot be read: ${fault.message}`);
}

function textList(value: unknown, offset: number, say: Say): readonly string[] {
  const items = isSeq(value) ? value.items : [];
  const texts = items.flatMap((item) => (isScalar(item) && String(item.value).trim() !== '' ? [String(item.value).trim()] : []));
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
    const at = isMap(item) ? (item.range?.[0] ?? offset) : offset;
    const field = (name: CorrectionKey): string | null => {
      const found: unknown = isMap(item) ? item.get(name) : null;
      return typeof found === 'string' && found.trim() !== '' ? found.trim() : null;
    };
    const date = field('date');
    const where = field('where');
    const why = field('why');
    if (date !== null && /^\d{4}-\d{2}-\d{2}$/.test(date) && where !== null && why !== null)
      return [{ date, where, was: field('was'), is: field('is'), why }];
    say(at, 'A correction needs a date such as 2026-03-14, where (the field) and why');
    return [];
  });
}

function reportTwice(facts: readonly PartFacts[], findings: FileFinding[]): void {
  const owners = new Map<string, string>();
  for (const { number, alsoWritten, file } of facts) {
    for (const spelling of new Set([number, ...alsoWritten])) {
      const owner = owners.get(spelling);
      if (owner === undefined) owners.set(spelling, file);
      else findings.push({ file, finding: pipelineFinding('part-sheet-invalid', `${spelling} has the fact sheet ${owner} already`) });
    }
  }
}
