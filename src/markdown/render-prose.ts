import type { Root as Markup, RootContent } from 'hast';
import type { Finding } from '../diagnostics/finding.ts';
import { settleDirectives, type NamesInReach } from './directives.ts';
import { settleHeadings, type ProseHeading } from './headings.ts';
import { settleLinks, type ProseLink } from './prose-links.ts';
import { takeImages, type ProseImage } from './prose-images.ts';
import { proseFinding, type Stretch } from './prose-finding.ts';
import { removedHtml } from './removed-html.ts';
import { slotsFor } from './slots.ts';
import { nestRawHtml, parseMarkdown, sanitise, toHtml, toMarkup } from './syntax.ts';
import { keepTradeNotation, tableRowsTooLong } from './trade-notation.ts';
import { walk } from './walk.ts';
import { withUnitsKept } from '../units/with-units-kept.ts';

/** The Markdown text of one entry and what its directives may name. */
export interface ProseInput {
  /** Text after the frontmatter. */
  readonly text: string;
  /** Offset of that text in its file, in UTF-16 units. */
  readonly startOffset: number;
  readonly slug: string;
  /** Null when the entry could not be read: names are then not judged. */
  readonly names: NamesInReach | null;
  /** Tells the ids that the page itself uses; none where left out. */
  readonly isTakenId?: (id: string) => boolean;
}

/** The text ready for its page. */
export interface Prose {
  /** Sanitised; links rooted and without the base path, tables as `<div data-table="…">`: see `placeProse`. */
  readonly html: string;
  readonly headings: readonly ProseHeading[];
  /** Ids of the tables placed, in order. */
  readonly placed: readonly string[];
  readonly links: readonly ProseLink[];
  readonly images: readonly ProseImage[];
  readonly findings: readonly Finding[];
}

/** Markdown to sanitised HTML with the entry's values, parts and tables in it. Never throws on any text. */
export function renderProse(input: ProseInput): Prose {
  const nested = deepNesting(input.text);
  if (nested !== null) return unread(input, nested);
  try {
    return rendered(input);
  } catch (error) {
    if (error instanceof RangeError) return unread(input, { start: 0, end: 0 });
    throw error;
  }
}

// Each mark at the start of a line opens a quotation or a list in the one before; the parser's time grows with the cube of their number.
const DEEP = /^(?:[ \t]*(?:>|[-+*][ \t]|\d{1,9}[.)][ \t])){13}/m;

function deepNesting(text: string): Stretch | null {
  const match = DEEP.exec(text);
  return match === null ? null : { start: match.index, end: match.index + match[0].length };
}

function unread({ startOffset }: ProseInput, place: Stretch): Prose {
  const finding = proseFinding('prose-too-deep', place, startOffset, 'The text is nested too deeply to be read, and is left out');
  return { html: '', headings: [], placed: [], links: [], images: [], findings: [finding] };
}

function rendered(input: ProseInput): Prose {
  const { text, startOffset } = input;
  const tree = parseMarkdown(text);
  const findings: Finding[] = [...keepTradeNotation(tree, text, startOffset), ...tableRowsTooLong(tree, startOffset)];
  const slots = slotsFor(text);
  const directives = settleDirectives(tree, input, slots);
  const pictures = takeImages(tree, startOffset, input.names?.photos ?? null);
  findings.push(...directives.findings, ...pictures.findings);

  const markup = toMarkup(tree);
  const nested = hasRawHtml(markup) ? nestRawHtml(markup, text) : markup;
  findings.push(...removedHtml(nested, text, startOffset));
  const clean = sanitise(nested);
  slots.fill(clean);
  alignByClass(clean);
  const headings = settleHeadings(clean, input.isTakenId ?? (() => false));
  const links = settleLinks(clean, input.slug);
  keepUnits(clean);
  return { html: toHtml(clean), headings, placed: directives.placed, links, images: pictures.images, findings };
}

function hasRawHtml(tree: Markup): boolean {
  let found = false;
  walk<RootContent>(tree, (node) => {
    found ||= node.type === 'raw';
    return undefined;
  });
  return found;
}

/** A number stays on one line with its unit, but in code, which is copied. */
function keepUnits(tree: Markup): void {
  walk<RootContent>(tree, (node, index) => {
    if (node.type === 'text') node.value = withUnitsKept(node.value);
    return node.type === 'element' && (node.tagName === 'code' || node.tagName === 'pre') ? index + 1 : undefined;
  });
}

/** The `align` attribute is obsolete and an inline style is forbidden by the content policy: a class says it. */
function alignByClass(tree: Markup): void {
  walk<RootContent>(tree, (node) => {
    if (node.type !== 'element' || node.properties['align'] === undefined) return undefined;
    const { align } = node.properties;
    delete node.properties['align'];
    if (align === 'right') node.properties['className'] = ['align-end'];
    if (align === 'center') node.properties['className'] = ['align-centre'];
    return undefined;
  });
}
