import type { Definition, Image, ImageReference, Root, RootContent } from 'mdast';
import type { Finding } from '../diagnostics/finding.ts';
import { proseFinding, stretchOf, type Stretch } from './prose-finding.ts';
import { walk } from './walk.ts';

/** A picture that the text places, by its path from the entry's folder. */
export interface ProseImage {
  readonly path: string;
  readonly stretch: Stretch;
}

/**
 * Takes the pictures out of the text: an untouched original is never published. Says what is wrong with each and returns
 * the local ones, so that their files can be looked for.
 */
export function takeImages(
  tree: Root,
  startOffset: number,
): { readonly images: readonly ProseImage[]; readonly findings: readonly Finding[] } {
  const definitions = new Map<string, Definition>();
  walk<RootContent>(tree, (node) => {
    if (node.type === 'definition' && !definitions.has(node.identifier)) definitions.set(node.identifier, node);
    return undefined;
  });
  const images: ProseImage[] = [];
  const findings: Finding[] = [];
  walk<RootContent>(tree, (node, index, parent) => {
    if (node.type !== 'image' && node.type !== 'imageReference') return undefined;
    parent.children.splice(index, 1);
    const address = node.type === 'image' ? node.url : (definitions.get(node.identifier)?.url ?? '');
    findings.push(...remarksOn(node, address, startOffset));
    if (isLocal(address)) images.push({ path: plainPath(address), stretch: stretchOf(node) });
    return index;
  });
  return { images, findings };
}

function remarksOn(node: Image | ImageReference, address: string, startOffset: number): Finding[] {
  const findings: Finding[] = [];
  const stretch = stretchOf(node);
  if ((node.alt ?? '').trim() === '')
    findings.push(proseFinding('prose-image-alt', stretch, startOffset, `The picture ${address} has no alternative text`));
  if (isLocal(address))
    findings.push(proseFinding('prose-image-later', stretch, startOffset, `The picture ${address} is left out of the page`));
  else
    findings.push(
      proseFinding(
        'prose-image-remote',
        stretch,
        startOffset,
        `The picture ${address.slice(0, 60)} is not beside the entry and is left out of the page`,
      ),
    );
  return findings;
}

function isLocal(address: string): boolean {
  return address !== '' && !/^(?:[a-z][a-z0-9+.-]*:|\/)/i.test(address);
}

function plainPath(address: string): string {
  const path = address.replace(/[?#].*$/s, '');
  try {
    return decodeURIComponent(path);
  } catch {
    return path; // A stray percent sign belongs to the name.
  }
}
