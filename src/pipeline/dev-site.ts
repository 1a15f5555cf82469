import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, watch } from 'node:fs';
import { PROJECT_ROOT } from './project-root.ts';
import { prepare, type Prepared } from './prepare.ts';
import { siteEnvironment, siteProgram } from './built-site/site-frames.ts';

/** What `startDev` is asked for. */
export interface DevOptions {
  readonly content: string;
  readonly prepared: string;
  readonly cache: string;
  readonly base: string;
  readonly port: number;
  /** Called after each reading of the content, the first included. */
  readonly onPrepared: (prepared: Prepared) => Promise<void>;
  readonly onFault: (message: string) => void;
  /** What the site server says, line by line. */
  readonly onServer: (line: string) => void;
}

/** A running writing session. */
export interface DevSession {
  /** Settles with the exit code of the site server. */
  readonly ended: Promise<number>;
  readonly stop: () => void;
}

// Editors save in several steps; one reading covers them.
const SETTLE_MILLISECONDS = 120;

/** Reads the content, broken entries included, starts the site's server on it, and reads again whenever a file changes. */
export async function startDev(options: DevOptions): Promise<DevSession> {
  const read = (): Promise<Prepared> =>
    prepare({ content: options.content, prepared: options.prepared, cache: options.cache, mode: 'dev' });
  const first = await read();
  await options.onPrepared(first);
  const child = startServer(options);
  const stopWatching = watchContent(options.content, async () => {
    try {
      await options.onPrepared(await read());
    } catch (error) {
      options.onFault(error instanceof Error ? error.message : String(error));
    }
  });
  const ended = new Promise<number>((resolve) => {
    child.on('close', (code) => {
      stopWatching();
      resolve(code ?? 0);
    });
  });
  return { ended, stop: () => void child.kill() };
}

function startServer(options: DevOptions): ChildProcess {
  const environment = siteEnvironment(options, options.prepared);
  const child = spawn(
    process.execPath,
    [siteProgram(), 'dev', '--root', PROJECT_ROOT, '--host', '127.0.0.1', '--port', String(options.port)],
    {
      cwd: PROJECT_ROOT,
      env: { ...process.env, ...environment, NODE_ENV: 'development' },
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  const pass = (chunk: Buffer): void => {
    for (const line of chunk.toString('utf8').split('\n')) if (line.trim() !== '') options.onServer(line);
  };
  child.stdout.on('data', pass);
  child.stderr.on('data', pass);
  return child;
}

/** Calls back once after a burst of changes, and never while the last call is still at work. Returns how to stop. */
export function watchContent(content: string, onChange: () => Promise<void>): () => void {
  if (!existsSync(content)) return () => undefined;
  let timer: NodeJS.Timeout | undefined;
  let busy = false;
  let again = false;
  const run = async (): Promise<void> => {
    if (busy) {
      again = true;
      return;
    }
    busy = true;
    await onChange();
    busy = false;
    if (again) {
      again = false;
      await run();
    }
  };
  const watcher = watch(content, { recursive: true }, () => {
    clearTimeout(timer);
    timer = setTimeout(() => void run(), SETTLE_MILLISECONDS);
  });
  return () => {
    clearTimeout(timer);
    watcher.close();
  };
}
