import { cursorOn, hasErrors, isAtEnd, refusalOf, refuseRest, remark, skipSpaces, takeSign } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { disagreement } from './agreement.ts';
import type { Quantity, Reading, Size } from './quantity.ts';
import { isImperial } from './read-quantity.ts';
import { readEdges } from './size-edges.ts';
import type { Edges } from './size-edges.ts';

type Length = Quantity<'length'>;

/**
 * Reads an outer size: a box "68 × 52 × 29 mm ± 0.3 mm", inches with any quote mark, a hyphen between the edges, edge letters, or a
 * cylinder "⌀12.5 × 25 mm". A unit at the end holds for every edge without one, a tolerance at the end for every edge. A second
 * writing in brackets or behind a slash must agree; the metric one is kept. Never throws.
 */
export function readSize(text: string): Reading<Size> {
  const refusal = refusalOf(text, 'a size');
  if (refusal !== null) return { ok: false, remarks: [refusal] };
  const cursor = cursorOn(text);
  skipHeading(cursor);
  const first = readEdges(cursor);
  const size = first === null ? null : sizeOf(cursor, first, text);
  const kept = size === null ? null : readSecondSize(cursor, size, text);
  skipSpaces(cursor);
  if (!isAtEnd(cursor) && !hasErrors(cursor.remarks)) refuseRest(cursor, 'a size has three edges, or a diameter and a height');
  if (kept === null || hasErrors(cursor.remarks)) return { ok: false, remarks: cursor.remarks };
  return { ok: true, value: kept, remarks: cursor.remarks };
}

const HEADING =
  /^\s*(?:size|dimensions?|dim\.?)?\s*:?\s*(?:(?:approx|approximately|about|circa|ca)\.?\s+|[~≈]\s*)?(?:\(?[LWHDT]\s*[x×*/]\s*[LWHDT]\s*[x×*/]\s*[LWHDT]\)?\s*[:=]?\s*)?/i;

function skipHeading(cursor: Cursor): void {
  cursor.at = HEADING.exec(cursor.text)?.[0].length ?? 0;
}

function sizeOf(cursor: Cursor, edges: Edges, written: string): Size | null {
  const [one, two, three] = edges.lengths;
  if (edges.lengths.length === 3 && edges.diameterAt === null && one !== undefined && two !== undefined && three !== undefined) {
    return { shape: 'box', edges: [one, two, three], written };
  }
  if (edges.lengths.length === 2 && edges.diameterAt !== null && one !== undefined && two !== undefined) {
    const [diameter, height] = edges.diameterAt === 0 ? [one, two] : [two, one];
    return { shape: 'cylinder', diameter, height, written };
  }
  if (hasErrors(cursor.remarks)) return null;
  const found = edges.lengths.length;
  const advice = found === 2 ? '; a cylinder needs ⌀ before its diameter' : '';
  remark(
    cursor,
    'error',
    `a box has three edges; ${found === 1 ? 'one length is' : `${found} lengths are`} written${advice}`,
    0,
    cursor.text.length,
  );
  return null;
}

function readSecondSize(cursor: Cursor, size: Size, text: string): Size {
  const isBracketed = takeSign(cursor, '(') || takeSign(cursor, '[');
  if (!isBracketed && !takeSign(cursor, '/') && !takeSign(cursor, '=') && !takeSign(cursor, ',') && !takeSign(cursor, ';')) return size;
  const edges = readEdges(cursor);
  const second = edges === null ? null : sizeOf(cursor, edges, text);
  if (second === null) return size;
  if (isBracketed && !takeSign(cursor, ')')) takeSign(cursor, ']');
  return agreeingSize(cursor, size, second);
}

function lengthsOf(size: Size): readonly Length[] {
  return size.shape === 'box' ? size.edges : [size.diameter, size.height];
}

function agreeingSize(cursor: Cursor, first: Size, second: Size): Size {
  const ones = lengthsOf(first);
  const others = lengthsOf(second);
  for (const [index, one] of ones.entries()) {
    const other = others[index];
    const contradiction = other === undefined ? 'the two writings of this size differ in shape' : disagreement(one, other);
    if (contradiction === null) continue;
    const span = { start: one.span.start, end: other?.span.end ?? cursor.written.length };
    cursor.remarks.push({ severity: 'error', message: contradiction, suggestion: null, span });
  }
  const isFirstImperial = isImperial(ones[0]?.unit ?? '');
  if (!hasErrors(cursor.remarks)) remark(cursor, 'note', 'both writings of the size agree within 2 %', 0, cursor.text.length);
  return isFirstImperial && !isImperial(others[0]?.unit ?? '') ? second : first;
}
