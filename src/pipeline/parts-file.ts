import { createHash } from 'node:crypto';
import { PART_SCHEMA } from '../entry/schema-parts.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import type { EntryRecord } from './entry-record.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { readBeside } from './read-beside.ts';
import { readSpreadsheet, type SpreadsheetCell, type SpreadsheetRow } from './read-spreadsheet.ts';
import type { EntryFile } from './scan-content.ts';

/** Frontmatter with the parts of a spreadsheet beside the entry put in, as if they had been written there. */
export interface PartsFile {
  readonly data: unknown;
  /** Findings in the entry itself. */
  readonly findings: readonly Finding[];
  /** Findings in the spreadsheet. */
  readonly elsewhere: readonly FileFinding[];
  readonly dependsOn: EntryRecord['dependsOn'];
  /** Moves a finding about one of these parts to its cell; null for one about anything else. */
  readonly inSpreadsheet: (finding: Finding) => FileFinding | null;
}

const HEADS = ['stage', 'reference', ...Object.keys(PART_SCHEMA.shape)];
type Parts = Record<string, Record<string, Record<string, unknown>>>;

/** Reads the spreadsheet that `parts: parts.csv` names; other frontmatter comes back as it is. */
export function partsFileOf(frontmatter: unknown, source: EntryFile): PartsFile {
  const name = partsName(frontmatter);
  const none: PartsFile = { data: frontmatter, findings: [], elsewhere: [], dependsOn: [], inSpreadsheet: () => null };
  if (name === null || typeof frontmatter !== 'object') return none;
  const bytes = readBeside(source.path, name);
  const dependsOn = [{ name, hash: bytes === null ? null : createHash('sha256').update(bytes).digest('hex') }];
  const withoutParts = { ...frontmatter, parts: {} };
  if (bytes === null) {
    const missing = pipelineFinding('parts-file-missing', `There is no file "${name}" beside the entry`, { in: 'data', path: ['parts'], part: 'value' });
    return { ...none, data: withoutParts, findings: [missing], dependsOn };
  }
  const file = `${source.file.slice(0, source.file.lastIndexOf('/'))}/${name}`;
  const elsewhere: FileFinding[] = [];
  const say = (message: string, at: { readonly line: number; readonly column: number }, rule: 'parts-file-row' | 'file-not-utf8' = 'parts-file-row'): void =>
    void elsewhere.push({ file, finding: pipelineFinding(rule, message, { in: 'file', line: at.line, column: at.column }) });
  const rows = readSpreadsheet(bytes, say);
  const cells = new Map<string, SpreadsheetCell>();
  const parts = partsOf(rows, cells, say);
  const inSpreadsheet = (finding: Finding): FileFinding | null => {
    const { where } = finding;
    if (where.in !== 'data' || where.path[0] !== 'parts') return null;
    const [, stage, reference, field] = where.path;
    const cell = cells.get(keyOf(stage, reference, field)) ?? cells.get(keyOf(stage, reference)) ?? cells.get(keyOf(stage)) ?? { line: 1, column: 1 };
    const shift = where.span?.start ?? 0;
    return { file, finding: { ...finding, where: { in: 'file', line: cell.line, column: cell.column + shift } } };
  };
  return { data: { ...frontmatter, parts }, findings: [], elsewhere, dependsOn, inSpreadsheet };
}

function partsName(frontmatter: unknown): string | null {
  if (typeof frontmatter !== 'object' || frontmatter === null || !('parts' in frontmatter)) return null;
  return typeof frontmatter.parts === 'string' ? frontmatter.parts : null;
}

function keyOf(...path: unknown[]): string {
  return path.filter((step) => step !== undefined).join('\n');
}

type Say = (message: string, at: { readonly line: number; readonly column: number }) => void;

function partsOf(rows: readonly SpreadsheetRow[], cells: Map<string, SpreadsheetCell>, say: Say): Parts {
  const [head, ...body] = rows;
  const heads = (head ?? []).map((cell) => cell.text.toLowerCase());
  (head ?? []).forEach((cell, column) => {
    const name = heads[column] ?? '';
    if (!HEADS.includes(name)) say(`"${cell.text}" is not a column of a parts file${didYouMean(name, HEADS)}`, cell);
    if (heads.indexOf(name) !== column) say(`The column "${cell.text}" stands twice`, cell);
  });
  for (const needed of ['stage', 'reference']) {
    if (!heads.includes(needed)) say(`The parts file has no column "${needed}"`, { line: 1, column: 1 });
  }
  const parts: Parts = {};
  for (const row of body) takeRow(row, heads, parts, cells, say);
  return parts;
}

function takeRow(row: SpreadsheetRow, heads: readonly string[], parts: Parts, cells: Map<string, SpreadsheetCell>, say: Say): void {
  const cellOf = (name: string): SpreadsheetCell | undefined => row[heads.indexOf(name)];
  const stage = cellOf('stage');
  const reference = cellOf('reference');
  if (stage === undefined || reference === undefined) return;
  for (const cell of [stage, reference]) {
    if (cell.text === '') return say(`This row has no ${cell === stage ? 'stage' : 'reference'}`, cell);
  }
  if (stage.text === '__proto__' || reference.text === '__proto__') return say('"__proto__" is no name for a stage or a part', stage);
  const ofStage = Object.hasOwn(parts, stage.text) ? (parts[stage.text] ?? {}) : {};
  parts[stage.text] = ofStage;
  if (Object.hasOwn(ofStage, reference.text)) return say(`The reference ${reference.text} stands twice in the stage ${stage.text}`, reference);
  const part: Record<string, unknown> = {};
  heads.forEach((name, column) => {
    const cell = row[column];
    if (cell === undefined || cell.text === '' || name === 'stage' || name === 'reference' || !HEADS.includes(name)) return;
    part[name] = fieldOf(name, cell.text);
    cells.set(keyOf(stage.text, reference.text, name), cell);
  });
  ofStage[reference.text] = part;
  cells.set(keyOf(stage.text, reference.text), reference);
  if (!cells.has(keyOf(stage.text))) cells.set(keyOf(stage.text), stage);
}

/** Cells hold text; the fields that the format has as a number, a yes or a list are read as such. */
function fieldOf(name: string, text: string): unknown {
  if (name === 'count' && /^\d{1,9}$/.test(text)) return Number(text);
  if (name === 'fitted' && /^(?:yes|true)$/i.test(text)) return true;
  if (name === 'fitted' && /^(?:no|false)$/i.test(text)) return false;
  if (name === 'also in' || name === 'also stated') return text.split(/\s*[;|]\s*/).filter((each) => each !== '');
  return text;
}
