import type { DataPath, Finding } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity, Rating, Reading, ReadingRemark } from '../units/quantity.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { EntryEvidence, Fact } from './entry.ts';
import { gapKey, type ListGaps, originalIndex } from './read-shape.ts';
import { readRatingOnce } from './remembered-reading.ts';
import { atValue, readingFinding } from './reading-rules.ts';
import { splitEvidence } from './split-evidence.ts';

/** What the readers of one entry share: where findings go, and which items of lists were left out. */
export interface ReadingContext {
  readonly findings: Finding[];
  readonly gaps: ListGaps;
}

/** A text at its place, with the evidence that holds where the text says none. */
export interface Written {
  readonly text: string;
  readonly path: DataPath;
  readonly evidence: EntryEvidence;
}

/** Turns remarks of a reader of text into findings at the value, each with its piece of the text. */
export function reportRemarks(context: ReadingContext, remarks: readonly ReadingRemark[], path: DataPath, shift = 0): void {
  for (const remark of remarks) {
    const span = { start: remark.span.start + shift, end: remark.span.end + shift };
    const advice = remark.suggestion === null ? {} : { advice: `Did you mean "${remark.suggestion}"?` };
    const rule = remark.severity === 'error' ? 'unreadable-value' : 'value-remark';
    context.findings.push(readingFinding(rule, atValue(path, span), remark.message, { severity: remark.severity, ...advice }));
  }
}

/** The value of a reading, or null where it was refused; its remarks become findings. */
export function accepted<T>(context: ReadingContext, reading: Reading<T>, path: DataPath, shift = 0): T | null {
  reportRemarks(context, reading.remarks, path, shift);
  return reading.ok ? reading.value : null;
}

/** Reads a quantity with its evidence; null where there is none or it cannot be read. */
export function readFact<D extends Dimension>(context: ReadingContext, written: Written | null, dimension: D): Fact<D> | null {
  if (written === null) return null;
  const { text, evidence } = splitEvidence(written.text);
  const quantity = accepted(context, readQuantity(text, dimension), written.path);
  return quantity === null ? null : { quantity, evidence: evidence ?? written.evidence, path: written.path };
}

/** Reads a quantity that may have one of several dimensions; where none fits, the remarks of the first one are reported. */
export function readAnyFact<D extends Dimension>(
  context: ReadingContext,
  written: Written | null,
  dimensions: readonly D[],
): Fact<D> | null {
  if (written === null) return null;
  const { text, evidence } = splitEvidence(written.text);
  let refused: readonly ReadingRemark[] | null = null;
  for (const dimension of dimensions) {
    const reading = readQuantity(text, dimension);
    if (reading.ok) {
      reportRemarks(context, reading.remarks, written.path);
      return { quantity: reading.value, evidence: evidence ?? written.evidence, path: written.path };
    }
    refused ??= reading.remarks;
  }
  reportRemarks(context, refused ?? [], written.path);
  return null;
}

/** Reads a quantity without evidence of its own, such as a share. `shift` is where `text` starts in the value at `path`. */
export function readPlain<D extends Dimension>(
  context: ReadingContext,
  text: string,
  dimension: D,
  path: DataPath,
  shift = 0,
): Quantity<D> | null {
  const quantity = accepted(context, readQuantity(text, dimension), path, shift);
  return quantity === null ? null : { ...quantity, span: { start: quantity.span.start + shift, end: quantity.span.end + shift } };
}

/** Reads a rating with its evidence. */
export function readRatingFact(
  context: ReadingContext,
  written: Written,
  bareNumber: Dimension | null,
  shift = 0,
): { readonly rating: Rating | null; readonly evidence: EntryEvidence } {
  const { text, evidence } = splitEvidence(written.text);
  const rating = accepted(context, readRatingOnce(text, bareNumber), written.path, shift);
  return { rating, evidence: evidence ?? written.evidence };
}

/** A text at a place, or null for a field that is not there. */
export function written(text: string | undefined, path: DataPath, evidence: EntryEvidence): Written | null {
  return text === undefined ? null : { text, path, evidence };
}

/** Items of a list with the places that they have in the file; one text alone counts as a list of one at its own place. */
export function listed<T>(
  context: ReadingContext,
  list: T | readonly T[] | undefined,
  path: DataPath,
): readonly { readonly item: T; readonly path: DataPath }[] {
  if (list === undefined) return [];
  if (!isList(list)) return [{ item: list, path }];
  const gone = context.gaps.get(gapKey(path)) ?? [];
  return list.map((item, index) => ({ item, path: [...path, originalIndex(gone, index)] }));
}

function isList<T>(list: T | readonly T[]): list is readonly T[] {
  return Array.isArray(list);
}

/** Texts of a field that takes one or several. */
export function textsOf(list: string | readonly string[] | undefined): readonly string[] {
  if (list === undefined) return [];
  return typeof list === 'string' ? [list] : list;
}

/** Names of a field that takes a list or one text with commas, each with its place. */
export function namesOf(
  context: ReadingContext,
  list: string | readonly string[] | undefined,
  path: DataPath,
): readonly { readonly name: string; readonly path: DataPath; readonly span: { readonly start: number; readonly end: number } }[] {
  return listed(context, list, path).flatMap(({ item, path: at }) =>
    [...item.matchAll(/[^,]+/gu)].flatMap((piece) => {
      const name = piece[0].trim();
      const start = piece.index + (piece[0].length - piece[0].trimStart().length);
      return name === '' ? [] : [{ name, path: at, span: { start, end: start + name.length } }];
    }),
  );
}

/** true and "yes" are yes; null where nothing is said. */
export function isYes(answer: 'yes' | 'no' | boolean | undefined): boolean | null {
  if (answer === undefined) return null;
  return answer === true || answer === 'yes';
}
