import { isAlias, isMap, isPair, isScalar, isSeq, parseDocument, type Document, type Node, type Pair, type Scalar } from 'yaml';
import type { DataPath, Diagnostic, Finding, Whereabouts } from '../diagnostics/finding.ts';
import { answerAmong } from './answer-for.ts';
import type { Answer } from './entry.ts';
import { splitFences } from './frontmatter-fences.ts';
import { lineStarts, positionAt } from './line-positions.ts';
import { scalarOffsets } from './scalar-offsets.ts';
import { scalarPlaces } from './scalar-places.ts';

/** A file whose findings are to be placed; `file` is its path from the content folder. */
export interface PlacedFile {
  readonly file: string;
  readonly text: string;
}

interface Extent {
  readonly start: number;
  readonly end: number;
}

type Locate = (where: Extract<Whereabouts, { in: 'data' }>) => Extent;

/**
 * Gives findings their lines and columns in the whole file, in the order of the file. The YAML is parsed a second time, with positions, only
 * when a finding needs it. `answers` are those of the entry: a finding that one of them answers carries its reason.
 */
export function placeFindings(source: PlacedFile, findings: readonly Finding[], answers: readonly Answer[] = []): readonly Diagnostic[] {
  if (findings.length === 0) return [];
  const starts = lineStarts(source.text);
  const locate = findings.some(({ where }) => where.in === 'data') ? locator(source.text) : () => ({ start: 0, end: 0 });
  return findings
    .map((finding) => diagnosticOf(source, finding, extentOf(source.text, starts, finding.where, locate), starts, answers))
    .sort((a, b) => a.line - b.line || a.column - b.column || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0));
}

function diagnosticOf(
  source: PlacedFile,
  finding: Finding,
  extent: Extent,
  starts: readonly number[],
  answers: readonly Answer[],
): Diagnostic {
  const from = positionAt(starts, extent.start);
  const to = positionAt(starts, Math.max(extent.start, extent.end));
  return {
    file: source.file,
    line: from.line,
    column: from.column,
    endLine: to.line,
    endColumn: to.column,
    severity: finding.severity,
    rule: finding.rule,
    message: finding.message,
    why: finding.why ?? null,
    advice: finding.advice ?? null,
    source: finding.source ?? null,
    subject: finding.subject ?? null,
    answer: answerAmong(answers, finding)?.because ?? null,
  };
}

function extentOf(text: string, starts: readonly number[], where: Whereabouts, locate: Locate): Extent {
  if (where.in === 'text') return { start: clamp(where.start, text), end: clamp(where.end, text) };
  if (where.in === 'file') {
    const start = clamp((starts[(where.line ?? 1) - 1] ?? 0) + (where.column ?? 1) - 1, text);
    return { start, end: start };
  }
  return locate(where);
}

function clamp(offset: number, text: string): number {
  return Math.min(Math.max(0, offset), text.length);
}

/** A function that finds the extent of keys and values of a file's data. */
function locator(text: string): Locate {
  const fences = splitFences(text);
  if (typeof fences === 'string') return () => ({ start: 0, end: 0 });
  const quick = scalarPlaces(fences.yaml);
  let tree: Document.Parsed | null | undefined;
  return (where) => {
    let extent = quick(where);
    if (extent === null) {
      // Made once, and only for a file with a finding that the quick way cannot place.
      tree = tree === undefined ? treeOf(fences.yaml) : tree;
      if (tree === null) return { start: 0, end: 0 };
      extent = extentInYaml(fences.yaml, tree, where);
    }
    if (extent === null) return { start: 0, end: Math.min(3, text.length) };
    return { start: fences.yamlStart + extent.start, end: fences.yamlStart + extent.end };
  };
}

function treeOf(yaml: string): Document.Parsed | null {
  try {
    return parseDocument(yaml, { version: '1.2', schema: 'core', uniqueKeys: false, prettyErrors: false, logLevel: 'silent' });
  } catch {
    // Only nesting beyond the stack ends here; such a file has no data findings to place.
    return null;
  }
}

interface Found {
  readonly key: Node | null;
  readonly value: Node | null;
  /** Whether the whole path is there; else this is the deepest part of it that is. */
  readonly whole: boolean;
}

function extentInYaml(yaml: string, tree: Document.Parsed, where: Extract<Whereabouts, { in: 'data' }>): Extent | null {
  const found = follow(tree.contents, where.path);
  const node = chosenNode(found, where.part);
  if (node?.range === null || node?.range === undefined) return null;
  const [start, end] = node.range;
  if (found.whole && where.span !== undefined && isScalar(node)) return pieceOf(yaml, node, start, end, where.span);
  return { start, end: trimmedEnd(yaml, start, end) };
}

/** A key, a value, or for a value that is a whole group or is not there: the key above it. */
function chosenNode(found: Found, part: 'key' | 'value'): Node | null {
  if (found.key === null) return null;
  if (part === 'key' || !found.whole || found.value === null) return found.key;
  return isBlank(found.value) || isMap(found.value) || isSeq(found.value) ? found.key : found.value;
}

function isBlank(node: Node): boolean {
  return isScalar(node) && node.range !== null && node.range !== undefined && node.range[0] === node.range[1];
}

function follow(root: Node | null, path: DataPath): Found {
  let key: Node | null = null;
  let value: Node | null = root;
  for (const segment of path) {
    const next = stepInto(value, segment);
    if (next === null) return { key, value, whole: false };
    key = next.key ?? key;
    value = next.value;
  }
  return { key, value, whole: true };
}

function stepInto(node: Node | null, segment: string | number): { readonly key: Node | null; readonly value: Node | null } | null {
  if (isMap(node)) {
    const pair = node.items.find((item) => isPair(item) && keyText(item) === String(segment));
    if (pair === undefined) return null;
    return { key: asNode(pair.key), value: asNode(pair.value) };
  }
  if (isSeq(node) && typeof segment === 'number') {
    const item = asNode(node.items[segment]);
    return item === null ? null : { key: item, value: item };
  }
  return null;
}

function keyText(pair: Pair): string | null {
  return isScalar(pair.key) ? String(pair.key.value) : null;
}

function asNode(thing: unknown): Node | null {
  if (isScalar(thing) || isMap(thing) || isSeq(thing) || isAlias(thing)) return thing;
  return null;
}

function pieceOf(yaml: string, node: Scalar, start: number, end: number, span: Extent): Extent {
  const value = typeof node.value === 'string' ? node.value : (node.source ?? '');
  const source = yaml.slice(start, end);
  const content = contentStart(source, node.type);
  const quote = node.type === 'QUOTE_DOUBLE' ? 'double' : node.type === 'QUOTE_SINGLE' ? 'single' : 'none';
  const offsets = scalarOffsets(source, content, value, quote);
  const from = offsets[Math.min(span.start, offsets.length - 1)] ?? 0;
  const to = offsets[Math.min(span.end, offsets.length - 1)] ?? from;
  return { start: start + from, end: start + Math.max(from, Math.min(to, source.length)) };
}

/** Where the content starts in a scalar as written: behind its quote, or in the first line of a block. */
function contentStart(source: string, type: string | null | undefined): number {
  if (type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE') return 1;
  if (type === 'BLOCK_LITERAL' || type === 'BLOCK_FOLDED') return Math.max(0, source.indexOf('\n') + 1);
  return 0;
}

function trimmedEnd(yaml: string, start: number, end: number): number {
  return start + yaml.slice(start, end).trimEnd().length;
}
