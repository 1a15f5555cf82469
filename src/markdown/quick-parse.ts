import type { Paragraph, Root, RootContent } from 'mdast';
import type { Point } from 'unist';
import { plainParagraphs, type PlainParagraph } from './plain-paragraphs.ts';
import { walk } from './walk.ts';

/** Below this many characters of plain paragraphs the detour costs more than it saves. */
const WORTH_IT = 400;
/** Stands for a plain paragraph while the rest is read. */
const STAND_IN = 'x';

/**
 * Reads Markdown with `parse`, but not its plain paragraphs: a tokenizer looks at every letter several times, and prose is mostly
 * letters. The tree is the one that `parse` gives for the whole text, positions included.
 */
export function quickParse(text: string, parse: (text: string) => Root): Root {
  const plain = plainParagraphs(text);
  if (plain.reduce((sum, { start, end }) => sum + end - start, 0) < WORTH_IT) return parse(text);
  const tree = parse(withStandIns(text, plain));
  return putBack(tree, text, plain);
}

function withStandIns(text: string, plain: readonly PlainParagraph[]): string {
  let short = '';
  let from = 0;
  for (const { start, end } of plain) {
    short += text.slice(from, start) + STAND_IN;
    from = end;
  }
  return short + text.slice(from);
}

/** How far offset and line in the shortened text are behind the whole text, from `from` on. */
interface Shift {
  readonly from: number;
  readonly offset: number;
  readonly line: number;
  /** The paragraph whose stand-in ends where this shift begins. */
  readonly before: PlainParagraph | null;
}

function putBack(tree: Root, text: string, plain: readonly PlainParagraph[]): Root {
  const shifts = shiftsOf(plain);
  const standIns = new Map(shifts.flatMap(({ from, before }) => (before === null ? [] : [[from - STAND_IN.length, before] as const])));
  const paragraphs = tree.children.map((node) => standIns.get(node.position?.start.offset ?? -1));
  walk<RootContent>(tree, (node) => {
    if (node.position !== undefined) node.position = { start: moved(node.position.start, shifts), end: moved(node.position.end, shifts) };
    return undefined;
  });
  tree.children = tree.children.map((node, index) => {
    const paragraph = paragraphs[index];
    return paragraph === undefined ? node : paragraphOf(paragraph, text);
  });
  if (tree.position !== undefined) tree.position = { start: tree.position.start, end: endOf(text) };
  return tree;
}

function endOf(text: string): Point {
  const lastLine = text.lastIndexOf('\n') + 1;
  return { line: text.split('\n').length, column: text.length - lastLine + 1, offset: text.length };
}

function shiftsOf(plain: readonly PlainParagraph[]): readonly Shift[] {
  const shifts: Shift[] = [{ from: 0, offset: 0, line: 0, before: null }];
  let offset = 0;
  let line = 0;
  for (const paragraph of plain) {
    const shortStart = paragraph.start - offset;
    offset += paragraph.end - paragraph.start - STAND_IN.length;
    line += paragraph.lines - 1;
    shifts.push({ from: shortStart + STAND_IN.length, offset, line, before: paragraph });
  }
  return shifts;
}

function moved(point: Point, shifts: readonly Shift[]): Point {
  const offset = point.offset ?? 0;
  let low = 0;
  let high = shifts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((shifts[middle]?.from ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  const shift = shifts[low];
  return shift === undefined ? point : { line: point.line + shift.line, column: point.column, offset: offset + shift.offset };
}

function paragraphOf({ start, end, line, lines }: PlainParagraph, text: string): Paragraph {
  const value = text.slice(start, end);
  const lastLine = value.length - (value.lastIndexOf('\n') + 1);
  const position = () => ({
    start: { line, column: 1, offset: start },
    end: { line: line + lines - 1, column: lastLine + 1, offset: end },
  });
  return { type: 'paragraph', children: [{ type: 'text', value, position: position() }], position: position() };
}
