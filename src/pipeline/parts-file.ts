import { createHash } from 'node:crypto';
import { lineKey, partsFromRows } from '../entry/parts-from-rows.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { EntryRecord } from './entry-record.ts';
import { notBeside } from './not-beside.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { readBeside } from './read-beside.ts';
import { readSpreadsheet, type Spreadsheet } from './read-spreadsheet.ts';
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

const SPREADSHEETS = { word: 'spreadsheet', names: /\.(?:csv|tsv)$/i };

/** The frontmatter as it is, of an entry that names no spreadsheet. */
export function noPartsFile(frontmatter: unknown): PartsFile {
  return { data: frontmatter, findings: [], elsewhere: [], dependsOn: [], inSpreadsheet: () => null };
}

/** Reads the spreadsheet that `parts: parts.csv` names; other frontmatter comes back as it is. */
export function partsFileOf(frontmatter: unknown, source: EntryFile): PartsFile {
  const name = partsName(frontmatter);
  const none = noPartsFile(frontmatter);
  if (name === null || typeof frontmatter !== 'object') return none;
  const bytes = readBeside(source.path, name);
  const dependsOn = [{ name, hash: bytes === null ? null : createHash('sha256').update(bytes).digest('hex') }];
  if (bytes === null) {
    const missing = pipelineFinding('parts-file-missing', notBeside(source.path, name, SPREADSHEETS), {
      in: 'data',
      path: ['parts'],
      part: 'value',
    });
    return { ...none, data: { ...frontmatter, parts: {} }, findings: [missing], dependsOn };
  }
  const file = `${source.file.slice(0, source.file.lastIndexOf('/'))}/${name}`;
  const sheet = readSpreadsheet(bytes);
  const { parts, findings, lines } = partsFromRows(sheet.rows);
  const elsewhere = [...sheet.findings, ...findings].map((finding) => ({ file, finding }));
  return {
    data: { ...frontmatter, parts },
    findings: [],
    elsewhere,
    dependsOn,
    inSpreadsheet: (finding) => inCell(finding, file, sheet, lines),
  };
}

function partsName(frontmatter: unknown): string | null {
  if (typeof frontmatter !== 'object' || frontmatter === null || !('parts' in frontmatter)) return null;
  return typeof frontmatter.parts === 'string' ? frontmatter.parts : null;
}

/** A finding at `parts.<stage>.<key>.<field>` stands in the row of that part, in the column of that field. */
function inCell(finding: Finding, file: string, sheet: Spreadsheet, lines: ReadonlyMap<string, number>): FileFinding | null {
  const { where } = finding;
  if (where.in !== 'data' || where.path[0] !== 'parts') return null;
  const [, stage, key, field] = where.path.map(String);
  const line = stage === undefined || key === undefined ? 1 : (lines.get(lineKey(stage, key)) ?? 1);
  const { line: cellLine, column } = sheet.placeOf(line, field ?? 'reference');
  return { file, finding: { ...finding, where: { in: 'file', line: cellLine, column: column + (where.span?.start ?? 0) } } };
}
