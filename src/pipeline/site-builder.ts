import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { writePolicyHeader } from './content-policy.ts';
import { copyOpenData, type PublishedSheets } from './device-files.ts';
import { copyPhotos } from './photos/photo-list.ts';
import { PROJECT_ROOT } from './project-root.ts';
import { copySharingImages, drawSharingImages } from './sharing-images.ts';
import { writeSiteMap } from './site-map.ts';

/** What the site is built from and where to. */
export interface SiteBuildRequest {
  readonly prepared: string;
  /** Empty folder to write the pages into. */
  readonly folder: string;
  /** Base path with slashes at both ends. */
  readonly base: string;
  readonly cache: string;
  /** Absolute address of the published site, null while unknown. */
  readonly address: string | null;
  readonly sheets: PublishedSheets;
}

/** Writes the pages into the requested folder. Rejects with a reason in words when it cannot. */
export type SiteBuilder = (request: SiteBuildRequest) => Promise<void>;

/** The environment in which the site's own configuration finds its folders. */
export function siteEnvironment(request: Omit<SiteBuildRequest, 'sheets'>): Record<string, string> {
  return {
    SEAMLINE_PREPARED: request.prepared,
    SEAMLINE_OUT: request.folder,
    SEAMLINE_BASE: request.base,
    // A variable of this name in the caller's environment (test runners and hosts set one) would win over the base path in templates.
    BASE_URL: request.base,
    SEAMLINE_CACHE: request.cache,
    ...(request.address === null ? {} : { SEAMLINE_SITE: request.address }),
    ASTRO_TELEMETRY_DISABLED: '1',
  };
}

/** Program file of the site generator, for starting it with this very Node. */
export function siteProgram(): string {
  return join(dirname(createRequire(import.meta.url).resolve('astro/package.json')), 'bin', 'astro.mjs');
}

/**
 * Ceilings for the generator's heap, which it otherwise lets grow with the machine: a thousand sheets were built within 300 MB,
 * and each further one adds its row of the manifest and its addresses.
 */
function memoryFlags(sheets: number): string[] {
  return [`--max-old-space-size=${Math.ceil(400 + sheets * 0.1)}`, '--max-semi-space-size=8'];
}

/** Builds with the site generator in a process of its own, so that its memory and its environment are its own too. */
export async function buildWithAstro(request: SiteBuildRequest): Promise<void> {
  // An image's address has to be a whole one, so there is none while that of the site is not known; drawn beside the pages otherwise.
  const images = request.address === null ? Promise.resolve([]) : drawSharingImages(request.prepared, request.cache);
  const [drawn] = await Promise.all([images, pagesByAstro(request)]);
  copyOpenData(request.prepared, request.folder, request.sheets);
  copySharingImages(drawn, request.folder);
  copyPhotos(request.prepared, request.folder);
  writePolicyHeader(request.folder);
  writeSiteMap(request.folder, request.base, request.address);
}

async function pagesByAstro(request: SiteBuildRequest): Promise<void> {
  const child = spawn(process.execPath, [...memoryFlags(request.sheets.slugs.length), siteProgram(), 'build', '--root', PROJECT_ROOT], {
    cwd: PROJECT_ROOT,
    env: { ...process.env, ...siteEnvironment(request), NODE_ENV: 'production' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  const listen = (chunk: Buffer): void => void (said = (said + chunk.toString('utf8')).slice(-8000));
  child.stdout.on('data', listen);
  child.stderr.on('data', listen);
  const code = await new Promise<number>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status) => {
      resolve(status ?? 1);
    });
  });
  if (code !== 0) throw new Error(lastWords(said));
}

/** The error lines of the generator without colour codes and without stack frames. */
function lastWords(said: string): string {
  const lines = said
    .replace(/\u001b\[[0-9;]*m/g, '')
    .split('\n')
    .map((line) => line.trimEnd());
  const telling = lines.filter((line) => line.trim() !== '' && !/^\s*at\s/.test(line) && !/^\s*Stack trace/i.test(line));
  const error = telling.findIndex((line) => /error/i.test(line));
  return telling.slice(error === -1 ? -6 : error, error === -1 ? undefined : error + 8).join('\n');
}
