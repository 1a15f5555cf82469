import type { Paragraph, PhrasingContent, Root, RootContent, Text } from 'mdast';
import type { ElementContent } from 'hast';
import type { Finding } from '../diagnostics/finding.ts';
import { nearestWord } from '../entry/nearest-word.ts';
import { didYouMean } from './nearest-name.ts';
import { proseFinding, stretchOf, type Stretch } from './prose-finding.ts';
import { DIRECTIVES, type NamesInReach } from './named-directives.ts';
import type { Slots } from './slots.ts';
import { walk } from './walk.ts';

export type { NamesInReach } from './named-directives.ts';

type Directive = Extract<RootContent, { type: 'textDirective' | 'leafDirective' | 'containerDirective' }>;

interface DirectiveSetting {
  readonly text: string;
  readonly startOffset: number;
  readonly names: NamesInReach | null;
}

/** Puts our markup in place of the directives that name something; whatever else has a colon stays as it was written. */
export function settleDirectives(
  tree: Root,
  setting: DirectiveSetting,
  slots: Slots,
): { readonly placed: readonly string[]; readonly findings: readonly Finding[] } {
  const placed: string[] = [];
  const findings: Finding[] = [];
  walk<RootContent>(tree, (node, index, parent) => {
    if (!isDirective(node)) return undefined;
    const outcome = outcomeOf(node, setting, placed);
    findings.push(...outcome.findings);
    const word = outcome.markup === null ? null : slots.keep(outcome.markup, node.type === 'textDirective' ? 'inline' : 'block');
    const instead = word === null ? asWritten(node, setting.text) : inItsPlace(node, word);
    parent.children.splice(index, 1, ...instead);
    return word === null && node.type === 'containerDirective' ? index : index + instead.length;
  });
  return { placed, findings };
}

function isDirective(node: { readonly type: string }): node is Directive {
  return node.type === 'textDirective' || node.type === 'leafDirective' || node.type === 'containerDirective';
}

interface Outcome {
  readonly markup: ElementContent | null;
  readonly findings: readonly Finding[];
}

function outcomeOf(node: Directive, setting: DirectiveSetting, placed: string[]): Outcome {
  const declared = DIRECTIVES.find((each) => each.name === node.name);
  const named = nameIn(node, setting.text);
  const stretch = stretchOf(node);
  if (
    declared === undefined ||
    node.type === 'containerDirective' ||
    (named === null && node.type === 'textDirective' && followsWord(stretch, setting.text))
  ) {
    return { markup: null, findings: declared === undefined || named !== null ? unknownDirective(node, named, setting) : [] };
  }
  if (named === null) {
    const message = `":${node.name}" names nothing; write ${declared.example}`;
    return { markup: null, findings: [proseFinding('prose-unknown-directive', stretch, setting.startOffset, message)] };
  }
  if (setting.names === null) return { markup: null, findings: [] };
  const result = declared.resolve(named, setting.names);
  if (!result.ok) {
    return { markup: null, findings: [proseFinding(result.rule, stretch, setting.startOffset, result.message)] };
  }
  const remarks = result.remark === null ? [] : [proseFinding(result.remark.rule, stretch, setting.startOffset, result.remark.message)];
  if (declared.name !== 'table' || result.markup.type !== 'element' || result.remark !== null)
    return { markup: result.markup, findings: remarks };
  if (placed.includes(named)) {
    const twice = proseFinding('prose-table-twice', stretch, setting.startOffset, `The table ${named} stands in the text already`);
    return { markup: { type: 'text', value: '' }, findings: [twice] };
  }
  placed.push(named);
  return { markup: result.markup, findings: [] };
}

/** A colon inside a word or a number is no directive ("12:30", "5V:3A", "1:N"), so only what looks meant as one is remarked on. */
function unknownDirective(node: Directive, named: string | null, { text, startOffset }: DirectiveSetting): Finding[] {
  const stretch = stretchOf(node);
  const names = DIRECTIVES.map((each) => each.name);
  const meant = named !== null || node.type !== 'textDirective' || (!followsWord(stretch, text) && nearestWord(node.name, names) !== null);
  if (!meant) return [];
  const message = names.some((name) => name === node.name)
    ? `":${node.name}" stands on a line of its own between three colons; it holds no text`
    : `":${node.name}" is not a directive${didYouMean(node.name, names)}`;
  return [proseFinding('prose-unknown-directive', { start: stretch.start, end: firstLineEnd(stretch, text) }, startOffset, message)];
}

function followsWord(stretch: Stretch, text: string): boolean {
  return /[\p{Letter}\p{Number}]/u.test(text[stretch.start - 1] ?? '');
}

function firstLineEnd({ start, end }: Stretch, text: string): number {
  const line = text.indexOf('\n', start);
  return line === -1 ? end : Math.min(line, end);
}

/** What the directive names: `[density]`, or the only attribute without a value, `{density}`. */
function nameIn(node: Directive, text: string): string | null {
  const { start, end } = stretchOf(node);
  const written = text.slice(start, firstLineEnd({ start, end }, text));
  const label = /^:{1,2}[^\s[{]+\[([^\]]*)\]/.exec(written)?.[1];
  if (label !== undefined) return label.trim();
  return /^:{1,2}[^\s[{]+\{\s*#?([^}=]*?)\s*\}/.exec(written)?.[1] ?? null;
}

function inItsPlace(node: Directive, word: string): RootContent[] {
  const text: Text = { type: 'text', value: word };
  return node.type === 'textDirective' ? [text] : [{ type: 'paragraph', children: [text] }];
}

/** The source itself, byte for byte; of a container its fence lines, with its content rendered between them. */
function asWritten(node: Directive, text: string): RootContent[] {
  const { start, end } = stretchOf(node);
  if (node.type === 'textDirective') return [{ type: 'text', value: text.slice(start, end) }];
  if (node.type === 'leafDirective') return [literalLine(text.slice(start, end))];
  const opening = text.slice(start, firstLineEnd({ start, end }, text));
  const closing = /\n\s*(:{3,})\s*$/.exec(text.slice(start, end))?.[1];
  const label = node.children[0];
  const content = label?.type === 'paragraph' && label.data?.directiveLabel === true ? node.children.slice(1) : node.children;
  return [literalLine(opening), ...content, ...(closing === undefined ? [] : [literalLine(closing)])];
}

function literalLine(value: string): Paragraph {
  const children: PhrasingContent[] = [{ type: 'text', value }];
  return { type: 'paragraph', children };
}
