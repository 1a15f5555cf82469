import { constructFromEvents, CORE_SCHEMA, type Event, parseEvents, YAMLException } from 'js-yaml';
import type { Finding } from '../diagnostics/finding.ts';
import { splitFences, type Fences } from './frontmatter-fences.ts';
import { readingFinding } from './reading-rules.ts';
import { refusedFeatures } from './refused-features.ts';
import { syntaxFindings } from './syntax-findings.ts';

/** Longest file that is read, in UTF-16 units. */
const LONGEST_FILE = 256 * 1024;

/** Deepest nesting that the parser follows before it gives up; entries are refused long before. */
export const PARSER_DEPTH = 100;

/** A file taken apart. `data` is undefined where the data could not be read; then `findings` says why. */
export interface ParsedFile {
  readonly data: unknown;
  /** The Markdown text and where it starts in the file. */
  readonly text: string;
  readonly textStart: number;
  /** Places are offsets in the whole file. */
  readonly findings: readonly Finding[];
}

/** Takes a file apart into data and text. Never throws; features of YAML that entries do not use are refused. */
export function parseFrontmatter(file: string): ParsedFile {
  const nothing = { data: undefined, text: '', textStart: file.length };
  if (file.length > LONGEST_FILE) {
    const message = `The file has ${Math.ceil(file.length / 1024)} KB; an entry has at most 256 KB.`;
    return { ...nothing, findings: [readingFinding('file-too-large', { in: 'file', line: 1, column: 1 }, message)] };
  }
  if (file.replace('\uFEFF', '').trim() === '') {
    return { ...nothing, findings: [readingFinding('empty-entry', { in: 'file', line: 1, column: 1 }, 'The file is empty.')] };
  }
  const fences = splitFences(file);
  if (typeof fences === 'string') return { ...nothing, findings: [missingFence(fences)] };
  return { text: fences.text, textStart: fences.textStart, ...readYaml(fences) };
}

function missingFence(which: 'no opening fence' | 'no closing fence'): Finding {
  const message =
    which === 'no opening fence'
      ? 'The first line is not ---, so the file has no data.'
      : 'The data begin with --- but no line --- ends them.';
  return readingFinding('missing-frontmatter', { in: 'file', line: 1, column: 1 }, message);
}

function readYaml(fences: Fences): { readonly data: unknown; readonly findings: readonly Finding[] } {
  try {
    const events = parseEvents(fences.yaml, { maxDepth: PARSER_DEPTH });
    const refused = refusedFeatures(fences.yaml, events, fences.yamlStart);
    if (refused.some((finding) => finding.severity === 'error')) return { data: undefined, findings: refused };
    return { ...construct(fences, events), findings: refused };
  } catch (fault) {
    return { data: undefined, findings: syntaxFindings(fences.yaml, fences.yamlStart, reasonOf(fault)) };
  }
}

/** @throws YAMLException for duplicate keys and values that the schema refuses */
function construct(fences: Fences, events: Event[]): { readonly data: unknown } {
  const documents = constructFromEvents(events, { source: fences.yaml, schema: CORE_SCHEMA });
  return { data: documents[0] ?? null };
}

function reasonOf(fault: unknown): { readonly message: string; readonly offset: number } {
  if (fault instanceof YAMLException) return { message: fault.reason, offset: fault.mark?.position ?? 0 };
  return { message: 'the nesting cannot be followed', offset: 0 };
}
