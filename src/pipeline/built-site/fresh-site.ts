import { copyFileSync, linkSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pageFacts, type PageFacts } from './page-facts.ts';
import type { PreviousOutput } from './previous-output.ts';

/** A site that is being put together in an empty folder. Paths are from its root, with forward slashes. */
export interface FreshSite {
  readonly folder: string;
  readonly previous: PreviousOutput | null;
  /** What each file followed from: same key, same bytes. */
  readonly keys: Map<string, string>;
  readonly facts: Map<string, PageFacts>;
  /** Folders that are there. */
  readonly made: Set<string>;
}

/** An empty site; `previous` is what the last build of the same output left, where nobody touched it. */
export function freshSite(folder: string, previous: PreviousOutput | null): FreshSite {
  return { folder, previous, keys: new Map(), facts: new Map(), made: new Set() };
}

/** Takes a file over from the last build where it followed from the same. Returns whether it did. */
export function takenOver(site: FreshSite, path: string, key: string): boolean {
  const { previous } = site;
  if (previous?.keys.get(path) !== key) return false;
  const facts = previous.facts.get(path);
  if (path.endsWith('.html') && facts === undefined) return false;
  // The same file under two names: the old folder is taken away when this one has its place, so nothing is ever shared.
  if (!linked(join(previous.folder, path), placeFor(site, path))) return false;
  site.keys.set(path, key);
  if (facts !== undefined) site.facts.set(path, facts);
  return true;
}

/** Writes a page or a text. */
export function putText(site: FreshSite, path: string, key: string, text: string): void {
  writeFileSync(placeFor(site, path), text);
  site.keys.set(path, key);
  if (path.endsWith('.html')) site.facts.set(path, pageFacts(text));
}

/** Copies a file that stands elsewhere as it is to be. */
export function putCopy(site: FreshSite, path: string, key: string, from: string): void {
  copyFileSync(from, placeFor(site, path));
  site.keys.set(path, key);
}

/** Notes a page that somebody else wrote into the folder. */
export function notePage(site: FreshSite, path: string, key: string, facts: PageFacts): void {
  site.keys.set(path, key);
  site.facts.set(path, facts);
}

/** Where the file goes, its folder made. */
export function placeFor({ folder, made }: FreshSite, path: string): string {
  const place = join(folder, ...path.split('/'));
  const parent = dirname(place);
  if (!made.has(parent)) mkdirSync(parent, { recursive: true });
  made.add(parent);
  return place;
}

function linked(from: string, to: string): boolean {
  try {
    linkSync(from, to);
    return true;
  } catch {
    // A file system without links, or a file that is gone: it is written anew.
    return false;
  }
}
