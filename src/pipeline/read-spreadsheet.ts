import { CsvError, parse } from 'csv-parse/sync';
import type { PartRow } from '../entry/parts-from-rows.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { pipelineFinding } from './pipeline-rule.ts';

/** Where something stands in a file; both count from 1. */
interface Place {
  readonly line: number;
  readonly column: number;
}

/** A table as rows of cells by column head, with the places of its cells. */
export interface Spreadsheet {
  readonly rows: readonly PartRow[];
  readonly findings: readonly Finding[];
  /** Place of a cell by the line of its row and the head of its column (any case); the start of the row where there is no such column. */
  readonly placeOf: (line: number, head: string) => Place;
}

interface ParsedRow {
  readonly record: readonly string[];
  readonly raw: string;
  readonly info: { readonly lines: number };
}

/** Reads comma, semicolon or tab separated text strictly: a row that does not fit is reported, and all others are read. */
export function readSpreadsheet(bytes: Uint8Array): Spreadsheet {
  const findings: Finding[] = [];
  const text = decoded(bytes);
  if (text === null)
    findings.push(pipelineFinding('file-not-utf8', 'The parts file is not UTF-8 text', { in: 'file', line: 1, column: 1 }));
  const delimiter = delimiterOf(text ?? '');
  const [head, ...body] = rowsOf(text ?? '', delimiter, findings).map((row) => ({ record: row.record, places: placesIn(row, delimiter) }));
  const heads = (head?.record ?? []).map((text) => text.trim());
  heads.forEach((text, column) => {
    const isAgain = heads.findIndex((other) => other.toLowerCase() === text.toLowerCase()) !== column;
    if (isAgain && text !== '') findings.push(rowFault(`The column "${text}" stands twice`, head?.places[column]));
  });
  const lineOfRow = (places: readonly Place[]): number => places[0]?.line ?? 1;
  const placesOfLine = new Map(body.map(({ places }) => [lineOfRow(places), places]));
  return {
    rows: body.map(({ record, places }) => ({
      cells: Object.fromEntries(heads.map((text, column) => [text, record[column] ?? ''])),
      line: lineOfRow(places),
    })),
    findings,
    placeOf(line, name) {
      const column = heads.findIndex((text) => text.toLowerCase().startsWith(name.toLowerCase()));
      return placesOfLine.get(line)?.[column] ?? { line, column: 1 };
    },
  };
}

function rowsOf(text: string, delimiter: string, findings: Finding[]): ParsedRow[] {
  const skip = (error: CsvError): void => void findings.push(rowFault(wordsOf(error), { line: lineOf(error), column: 1 }));
  try {
    const rows: readonly unknown[] = parse(text, {
      bom: true,
      delimiter,
      info: true,
      raw: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      on_skip: (error) => {
        if (error !== undefined) skip(error);
      },
    });
    return rows.filter(isParsedRow);
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    skip(error);
    return [];
  }
}

/** The parser's types do not follow its `raw` and `info` options, so the shape is looked at. */
function isParsedRow(row: unknown): row is ParsedRow {
  return (
    typeof row === 'object' &&
    row !== null &&
    'record' in row &&
    Array.isArray(row.record) &&
    'raw' in row &&
    typeof row.raw === 'string' &&
    'info' in row
  );
}

/** Null where the bytes are no UTF-8. */
function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Whichever of the three stands most often in the heading. */
function delimiterOf(text: string): string {
  const head = text.split('\n', 1)[0] ?? '';
  const count = (mark: string): number => head.split(mark).length - 1;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

function rowFault(message: string, place: Place | undefined): Finding {
  return pipelineFinding('parts-file-row', message, { in: 'file', line: place?.line ?? 1, column: place?.column ?? 1 });
}

function wordsOf(error: CsvError): string {
  if (error.code === 'CSV_RECORD_INCONSISTENT_FIELDS_LENGTH') return 'This row has another number of cells than the heading';
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') return 'A double quote is opened and never closed';
  if (error.code === 'INVALID_OPENING_QUOTE' || error.code === 'CSV_INVALID_CLOSING_QUOTE')
    return 'A double quote inside a cell must be doubled, and the cell put into double quotes';
  return 'This row cannot be read';
}

function lineOf(error: CsvError): number {
  const lines = error['lines'];
  return typeof lines === 'number' ? lines : 1;
}

/** Places of the cells of a row: it is walked once more as written, minding quotes. */
function placesIn({ raw, info }: ParsedRow, delimiter: string): Place[] {
  const body = raw.replace(/^[\r\n]+|[\r\n]+$/g, '');
  let line = info.lines - (body.split('\n').length - 1);
  let column = 1;
  let quoted = false;
  const places = [{ line, column }];
  for (const character of body) {
    column += character.length;
    if (character === '"') quoted = !quoted;
    if (character === '\n') {
      line += 1;
      column = 1;
    }
    if (character === delimiter && !quoted) places.push({ line, column });
  }
  return places;
}
