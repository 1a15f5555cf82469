import { createHash } from 'node:crypto';
import { statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import type { GivenOptions } from './command.ts';
import type { CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

/** Folders that a command works with, absolute. */
export interface Places {
  readonly content: string;
  readonly prepared: string;
  readonly cache: string;
}

/**
 * The content folder with its cache. Two content folders never share one.
 *
 * @throws WrongUsage when there is no such folder
 */
export function placesOf(content: string, streams: CommandStreams): Places {
  if (statSync(content, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new WrongUsage(
      `There is no content folder ${content}; name one with --content DIR, or write the first entry with "seamline new <slug>"`,
    );
  }
  const given = streams.env['SEAMLINE_CACHE'];
  const name = `${basename(content)}-${createHash('sha256').update(content).digest('hex').slice(0, 8)}`;
  const cache = join(given === undefined ? join(streams.cwd, '.cache', 'seamline') : resolve(streams.cwd, given), name);
  return { content, cache, prepared: join(cache, 'prepared') };
}

/** The content folder that the options name, absolute; `content` where they name none. */
export function contentFolder(options: GivenOptions, streams: CommandStreams): string {
  return resolve(streams.cwd, options.text('content') ?? 'content');
}

/**
 * The base path with a slash at both ends.
 *
 * @throws WrongUsage for anything that is not a plain path
 */
export function basePath(options: GivenOptions): string {
  const given = options.text('base') ?? '/';
  const base = `/${given
    .split('/')
    .filter((step) => step !== '')
    .join('/')}/`.replace('//', '/');
  const isPlain = /^\/(?:[A-Za-z0-9_~][A-Za-z0-9._~-]*\/)*$/.test(base);
  if (!isPlain || /^[a-z]+:/i.test(given))
    throw new WrongUsage(`--base must be the path under which the site is published, such as / or /sub/, not "${given}"`);
  return base;
}

/**
 * The port to serve on, and whether another one will do when it is taken.
 *
 * @throws WrongUsage for anything that is no port
 */
export function portOf(options: GivenOptions): { readonly port: number; readonly orAny: boolean } {
  const given = options.text('port');
  if (given === undefined) return { port: 4400, orAny: true };
  const port = Number(given);
  if (!/^\d{1,5}$/.test(given) || port > 65_535) throw new WrongUsage(`--port must be a number from 0 to 65535, not "${given}"`);
  return { port, orAny: false };
}
