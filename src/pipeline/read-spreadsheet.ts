import { CsvError, parse } from 'csv-parse/sync';

/** One cell with its place in the file. */
export interface SpreadsheetCell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

export type SpreadsheetRow = readonly SpreadsheetCell[];

type Say = (message: string, at: { readonly line: number; readonly column: number }, rule?: 'parts-file-row' | 'file-not-utf8') => void;

/** Reads comma, semicolon or tab separated text strictly: a row that does not fit is reported, and all others are read. */
export function readSpreadsheet(bytes: Uint8Array, say: Say): SpreadsheetRow[] {
  const text = decode(bytes, say);
  if (text === null) return [];
  const delimiter = delimiterOf(text);
  let rows: readonly ParsedRow[];
  try {
    const parsed: readonly unknown[] = parse(text, {
      bom: true,
      delimiter,
      info: true,
      raw: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      on_skip: (error) => {
        if (error !== undefined) say(faultOf(error), { line: lineOf(error), column: 1 });
      },
    });
    rows = parsed.filter(isParsedRow);
  } catch (error) {
    say(error instanceof CsvError ? faultOf(error) : 'The file could not be read as a table', { line: error instanceof CsvError ? lineOf(error) : 1, column: 1 });
    return [];
  }
  return rows.map(({ record, raw, info }) => cellsOf(record, raw, info.lines, delimiter));
}

interface ParsedRow {
  readonly record: readonly string[];
  readonly raw: string;
  readonly info: { readonly lines: number };
}

/** The parser's types do not follow its `raw` and `info` options, so the shape is looked at. */
function isParsedRow(row: unknown): row is ParsedRow {
  return typeof row === 'object' && row !== null && 'record' in row && Array.isArray(row.record) && 'raw' in row && typeof row.raw === 'string' && 'info' in row;
}

function decode(bytes: Uint8Array, say: Say): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    say('The parts file is not UTF-8 text', { line: 1, column: 1 }, 'file-not-utf8');
    return null;
  }
}

/** Whichever of the three stands most often in the heading. */
function delimiterOf(text: string): string {
  const head = text.split('\n', 1)[0] ?? '';
  const count = (mark: string): number => head.split(mark).length - 1;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

function faultOf(error: CsvError): string {
  if (error.code === 'CSV_RECORD_INCONSISTENT_FIELDS_LENGTH' || error.code === 'CSV_RECORD_INCONSISTENT_COLUMNS') return 'This row has another number of cells than the heading';
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') return 'A double quote is opened and never closed';
  if (error.code === 'INVALID_OPENING_QUOTE' || error.code === 'CSV_INVALID_CLOSING_QUOTE') return 'A double quote inside a cell must be doubled, and the cell put into double quotes';
  return 'This row cannot be read';
}

function lineOf(error: CsvError): number {
  const lines = error['lines'];
  return typeof lines === 'number' ? lines : 1;
}

/** Cells with their places: the record is walked once more as written, minding quotes. */
function cellsOf(record: readonly string[], raw: string, lastLine: number, delimiter: string): SpreadsheetRow {
  const body = raw.replace(/^[\r\n]+|[\r\n]+$/g, '');
  let line = lastLine - (body.split('\n').length - 1);
  let column = 1;
  let quoted = false;
  const starts = [{ line, column }];
  for (const character of body) {
    column += character.length;
    if (character === '"') quoted = !quoted;
    if (character === '\n') {
      line += 1;
      column = 1;
    }
    if (character === delimiter && !quoted) starts.push({ line, column });
  }
  return record.map((text, index) => ({ text: text.trim(), ...(starts[index] ?? { line, column }) }));
}
