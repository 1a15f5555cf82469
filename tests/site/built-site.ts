import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { preparationOf } from '../../src/pipeline/prepare-apart.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';
import { serverOf } from '../../src/pipeline/serve-folder.ts';
import { buildFromFrames } from '../../src/pipeline/site-builder.ts';

/** A small site, built in a folder of its own from three teardowns of the demo bench. */
export interface BuiltSite {
  readonly folder: string;
  readonly base: string;
  /** Addresses of all pages with the base path before them. */
  readonly pages: readonly string[];
  /** Slugs of the teardowns. */
  readonly slugs: readonly string[];
}

/** What a test puts into the content folder besides. */
export interface MoreContent {
  /** Files by path from the content folder. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  /** Address under which the site is published. */
  readonly address?: string;
}

/** Builds the site under a base path. `teardowns` names folders of the demo; none builds a site without content. */
export async function buildSmallSite(base: string, teardowns: readonly string[], more: MoreContent = {}): Promise<BuiltSite> {
  const room = mkdtempSync(join(tmpdir(), 'small-site-'));
  const content = join(room, 'content');
  mkdirSync(join(content, 'teardowns'), { recursive: true });
  cpSync(join(PROJECT_ROOT, 'demo', 'site.yaml'), join(content, 'site.yaml'));
  for (const slug of teardowns)
    cpSync(join(PROJECT_ROOT, 'demo', 'teardowns', slug), join(content, 'teardowns', slug), { recursive: true });
  if (more.address !== undefined) appendFileSync(join(content, 'site.yaml'), `address: ${more.address}\n`);
  for (const [path, bytes] of Object.entries(more.files ?? {})) {
    mkdirSync(dirname(join(content, path)), { recursive: true });
    writeFileSync(join(content, path), bytes);
  }
  const prepared = join(room, 'prepared');
  const { manifest } = await prepare({ content, prepared, cache: join(room, 'cache'), mode: 'build' });
  const folder = join(room, 'out');
  await buildFromFrames({ prepared, folder, base, cache: join(room, 'cache'), preparation: preparationOf({ manifest, diagnostics: [] }) });
  const pages = htmlFiles(folder).map((file) => `${base}${relative(folder, file).replace(/(^|\/)index\.html$/, '$1')}`);
  return { folder, base, pages: pages.sort(), slugs: teardowns };
}

function htmlFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && file.name.endsWith('.html'))
    .map((file) => join(file.parentPath, file.name));
}

/** Source of one page. */
export function pageSource(site: BuiltSite, address: string): string {
  const path = address.slice(site.base.length);
  return readFileSync(join(site.folder, path === '' || path.endsWith('/') ? `${path}index.html` : path), 'utf8');
}

/** Serves the site on a free port of this machine. */
export async function serveSite(site: BuiltSite): Promise<{ readonly origin: string; readonly server: Server }> {
  const server = serverOf(site.folder, site.base);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  // A server that listens on a port has such an address.
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}`, server };
}

/** One page of each kind that the site has, home and the teardowns first. */
export function onePageOfEachKind(site: BuiltSite): readonly string[] {
  const at = (address: string): string => `${site.base}${address}`;
  const firstUnder = (folder: string): readonly string[] =>
    site.pages.filter((page) => page.startsWith(at(`${folder}/`)) && page !== at(`${folder}/`)).slice(0, 1);
  const lists = ['finder', 'planner', 'compare', 'search', 'topologies', 'parts', 'makers', 'methods', 'rules', 'bench', 'data']
    .map((folder) => at(`${folder}/`))
    .filter((page) => site.pages.includes(page));
  const single = ['compare', 'topologies', 'parts', 'makers', 'methods', 'rules'].flatMap(firstUnder);
  return [at(''), ...site.slugs.map((slug) => at(`teardowns/${slug}/`)), ...lists, ...single, at('404.html')];
}
