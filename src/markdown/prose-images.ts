import type { Definition, Image, ImageReference, Link, Root, RootContent } from 'mdast';
import type { Finding } from '../diagnostics/finding.ts';
import { proseFinding, stretchOf, type Stretch } from './prose-finding.ts';
import { walk } from './walk.ts';

/** A picture that the text places, by its path from the entry's folder. */
export interface ProseImage {
  readonly path: string;
  readonly stretch: Stretch;
}

/**
 * Takes the pictures out of the text: an untouched original is never published. One of the entry's photos becomes a link to where it stands
 * framed; of every other it is said what is wrong, and the local ones are returned, so that their files can be looked for.
 *
 * @param photos files of the photos in their order; null where the entry could not be read, and none is then said to be missing
 */
export function takeImages(
  tree: Root,
  startOffset: number,
  photos: readonly string[] | null,
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
    const address = node.type === 'image' ? node.url : (definitions.get(node.identifier)?.url ?? '');
    const photo = isLocal(address) ? (photos ?? []).indexOf(plainPath(address)) : -1;
    if (photo !== -1) {
      parent.children.splice(index, 1, linkToPhoto(photo + 1, node.alt ?? ''));
      return index + 1;
    }
    parent.children.splice(index, 1);
    findings.push(...remarksOn(node, address, startOffset));
    if (isLocal(address)) images.push({ path: plainPath(address), stretch: stretchOf(node) });
    return index;
  });
  return { images, findings };
}

function linkToPhoto(number: number, alt: string): Link {
  const words = alt.trim() === '' ? '' : `, ${alt.trim()}`;
  return { type: 'link', url: `#photo-${String(number)}`, children: [{ type: 'text', value: `photo ${String(number)}${words}` }] };
}

function remarksOn(node: Image | ImageReference, address: string, startOffset: number): Finding[] {
  const findings: Finding[] = [];
  const stretch = stretchOf(node);
  if ((node.alt ?? '').trim() === '')
    findings.push(proseFinding('prose-image-alt', stretch, startOffset, `The picture ${address} has no alternative text`));
  if (isLocal(address))
    findings.push(
      proseFinding(
        'prose-image-unlisted',
        stretch,
        startOffset,
        `The picture ${address} is not among the photos and is left out of the page`,
      ),
    );
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
