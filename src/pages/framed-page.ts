import type { SiteSettings } from '../corpus/prepared.ts';
import { withBase } from '../render/with-base.ts';
import { fillHoles } from './frame-holes.ts';
import { shellHead, shellOpening } from './sheet-shell.ts';
import type { SiteAddresses } from './site-addresses.ts';
import type { DrawnPage, FrameKind } from './site-page.ts';

/** What all pages of a site are framed with. */
export interface Framing {
  /** Text of each frame, its places open. */
  readonly frames: Readonly<Record<FrameKind, string>>;
  readonly site: SiteSettings;
  /** Base path with slashes at both ends. */
  readonly base: string;
  readonly addresses: SiteAddresses;
}

/** A whole page: the drawn one in its frame. */
export function framedPage(page: DrawnPage, { frames, site, base, addresses }: Framing): string {
  return fillHoles(frames[page.frame], {
    head: shellHead(page.head, site, addresses),
    opening: withBase(shellOpening(page.head, site), base),
    zones: withBase(page.html, base),
  });
}
