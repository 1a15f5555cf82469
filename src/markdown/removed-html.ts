import type { Element, Root, RootContent } from 'hast';
import type { Finding } from '../diagnostics/finding.ts';
import { ALLOWED_HTML } from './allowed-html.ts';
import { proseFinding, stretchOf, type Stretch } from './prose-finding.ts';
import { walk } from './walk.ts';

/** Says, before the tree is sanitised, what sanitising will take out of it. */
export function removedHtml(tree: Root, text: string, startOffset: number): Finding[] {
  const findings: Finding[] = [];
  let place: Stretch = { start: 0, end: 0 };
  walk<RootContent>(tree, (node, index) => {
    if (node.type !== 'element') return undefined;
    if (node.position !== undefined) place = openingTag(stretchOf(node), text);
    for (const message of removedFrom(node)) findings.push(proseFinding('prose-html-removed', place, startOffset, message));
    return isAllowed(node.tagName) ? undefined : index + 1;
  });
  return findings;
}

/** The tag that opens an element; of a link or picture of Markdown the whole of it. An element that is never closed ends nowhere, or before it starts. */
function openingTag({ start, end }: Stretch, text: string): Stretch {
  const tag = /^<[^>\n]*>/.exec(text.slice(start))?.[0];
  return { start, end: tag === undefined ? Math.max(start, Math.min(end, text.length)) : start + tag.length };
}

function isAllowed(tagName: string): boolean {
  return (ALLOWED_HTML.tagNames ?? []).includes(tagName);
}

function removedFrom(node: Element): string[] {
  if (!isAllowed(node.tagName)) return [`The element <${node.tagName}> was removed`];
  const removed: string[] = [];
  for (const [name, value] of Object.entries(node.properties)) {
    if (value === null || value === undefined || value === false) continue;
    const written = String(value);
    if (!allowsAttribute(node.tagName, name, written))
      removed.push(`The attribute ${attributeName(name)} of <${node.tagName}> was removed`);
    else if (!allowsAddress(name, written))
      removed.push(`The link to "${shortened(written)}" was removed: its scheme is not http, https or mailto`);
  }
  return removed;
}

function allowsAttribute(tagName: string, name: string, value: string): boolean {
  const definitions = [...(ALLOWED_HTML.attributes?.[tagName] ?? []), ...(ALLOWED_HTML.attributes?.['*'] ?? [])];
  return definitions.some((definition) => {
    if (typeof definition === 'string') return definition === name;
    const [property, ...values] = definition;
    return (
      property === name &&
      (values.length === 0 ||
        value
          .split(',')
          .some((each) => values.some((allowed) => (allowed instanceof RegExp ? allowed.test(each) : String(allowed) === each))))
    );
  });
}

/** A scheme counts only before the first slash, question mark or number sign, as the sanitiser reads it. */
function allowsAddress(name: string, value: string): boolean {
  const allowed = ALLOWED_HTML.protocols?.[name];
  if (allowed === undefined || allowed === null) return true;
  const scheme = /^[^:/?#]*(?=:)/.exec(value)?.[0];
  return scheme === undefined || allowed.includes(scheme);
}

function attributeName(property: string): string {
  return property.replace(/[A-Z]/g, (letter) => (property.startsWith('data') ? `-${letter}` : letter)).toLowerCase();
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
