import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import type { SiteSettings } from '../../corpus/prepared.ts';
import { writePolicyHeader } from '../content-policy.ts';
import { programVersion } from '../output-state.ts';
import { PROJECT_ROOT } from '../project-root.ts';
import { SITE_SETTINGS_FILE, writeSiteSettings } from '../site-settings-file.ts';

/** What frames are made from. */
export interface FramesRequest {
  readonly prepared: string;
  readonly cache: string;
  /** Base path with slashes at both ends. */
  readonly base: string;
  readonly site: SiteSettings;
  /** Gives up an unfinished run: the content has errors. */
  readonly signal?: AbortSignal;
}

/** Everything of a site that follows from the program and the settings alone: frames, methods, rules, styles, scripts, faces. */
export interface SiteFrames {
  readonly folder: string;
  /** Same key, same bytes. */
  readonly key: string;
}

/** Frames of other settings or base paths that are kept for the next build. */
const KEPT = 4;

/** Makes the frames with the site generator, or takes those that were made from the same program and settings. */
export async function siteFrames(request: FramesRequest): Promise<SiteFrames> {
  const { cache, base, site, prepared } = request;
  const key = createHash('sha256')
    .update(programVersion())
    .update(JSON.stringify([base, site]))
    .digest('hex')
    .slice(0, 32);
  const shelf = join(resolve(cache), 'frames');
  const folder = join(shelf, key);
  if (!existsSync(folder)) {
    mkdirSync(shelf, { recursive: true });
    const unfinished = join(shelf, `.${key}.${String(process.pid)}`);
    rmSync(unfinished, { recursive: true, force: true });
    writeSiteSettings(prepared, site);
    await pagesByAstro(request, unfinished);
    writePolicyHeader(unfinished);
    if (!existsSync(folder)) renameSync(unfinished, folder);
    rmSync(unfinished, { recursive: true, force: true });
  }
  const now = new Date();
  utimesSync(folder, now, now);
  dropOldFrames(shelf, folder);
  return { folder, key };
}

function dropOldFrames(shelf: string, current: string): void {
  const others = readdirSync(shelf)
    .map((name) => join(shelf, name))
    .filter((path) => path !== current)
    .map((path) => ({ path, used: statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0 }))
    .sort((one, other) => other.used - one.used);
  for (const { path } of others.slice(KEPT)) rmSync(path, { recursive: true, force: true });
}

/** The environment in which the site's own configuration finds its folders. */
export function siteEnvironment(request: Pick<FramesRequest, 'prepared' | 'cache' | 'base'>, folder: string): Record<string, string> {
  return {
    SEAMLINE_PREPARED: resolve(request.prepared),
    SEAMLINE_OUT: folder,
    SEAMLINE_BASE: request.base,
    // A variable of this name in the caller's environment (test runners and hosts set one) would win over the base path in templates.
    BASE_URL: request.base,
    SEAMLINE_CACHE: resolve(request.cache),
    ASTRO_TELEMETRY_DISABLED: '1',
  };
}

/** Program file of the site generator, for starting it with this very Node. */
export function siteProgram(): string {
  return join(dirname(createRequire(import.meta.url).resolve('astro/package.json')), 'bin', 'astro.mjs');
}

/** The generator lets its heap grow with the machine otherwise; what it makes does not grow with the content. */
const MEMORY_FLAGS = ['--max-old-space-size=400', '--max-semi-space-size=8'];

/** In a process of its own, so that the generator's memory and environment are its own too. */
async function pagesByAstro(request: FramesRequest, folder: string): Promise<void> {
  const child = spawn(process.execPath, [...MEMORY_FLAGS, siteProgram(), 'build', '--root', PROJECT_ROOT], {
    cwd: PROJECT_ROOT,
    env: { ...process.env, ...siteEnvironment(request, folder), NODE_ENV: 'production' },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(request.signal === undefined ? {} : { signal: request.signal }),
  });
  let said = '';
  const listen = (chunk: Buffer): void => void (said = (said + chunk.toString('utf8')).slice(-8000));
  child.stdout.on('data', listen);
  child.stderr.on('data', listen);
  const code = await new Promise<number>((done, reject) => {
    child.on('error', reject);
    child.on('close', (status) => {
      done(status ?? 1);
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

/** Text of the frame of a kind of page. */
export function readFrame({ folder }: SiteFrames, kind: string): string {
  return readFileSync(join(folder, 'frames', kind, 'index.html'), 'utf8');
}

/** Files of the frames' folder that go into the site as they are or filled: from its root, forward slashes. */
export function frameFiles({ folder }: SiteFrames): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) =>
      join(each.parentPath, each.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .filter((path) => !path.startsWith('frames/') && path !== SITE_SETTINGS_FILE)
    .sort();
}
