import { join, resolve } from 'node:path';
import { PROJECT_ROOT } from '../pipeline/project-root.ts';
import { listen, serverOf } from '../pipeline/serve-folder.ts';
import { buildInto } from './build.ts';
import type { Command, GivenOptions } from './command.ts';
import { basePath, portOf } from './places.ts';
import { DONE, type CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

export const demo: Command = {
  name: 'demo',
  operand: '',
  meaning: 'check, build and serve the invented bench in demo/',
  options: ['out', 'base', 'port', 'no-serve'],
  run: runDemo,
};

async function runDemo(_: string, options: GivenOptions, streams: CommandStreams): Promise<number> {
  const base = basePath(options);
  const { port, orAny } = portOf(options);
  const out = resolve(streams.cwd, options.text('out') ?? 'demo-site');
  const code = await buildInto({ content: join(PROJECT_ROOT, 'demo'), out, base }, streams);
  if (code !== DONE || options.flag('no-serve')) return code;
  return serveUntilStopped(out, base, port, orAny, streams);
}

async function serveUntilStopped(folder: string, base: string, port: number, orAny: boolean, streams: CommandStreams): Promise<number> {
  const server = serverOf(folder, base);
  let address: string;
  try {
    address = await listen(server, port, base, orAny);
  } catch {
    throw new WrongUsage(`Port ${String(port)} cannot be used; another program may have it. Leave --port out to take a free one`);
  }
  streams.stdout.write(`The demo is at ${address} (stop with Ctrl-C)\n`);
  await new Promise<void>((ended) => {
    const stop = (): void => {
      server.close(() => {
        ended();
      });
      server.closeAllConnections();
    };
    if (streams.stop?.aborted === true) stop();
    streams.stop?.addEventListener('abort', stop, { once: true });
  });
  return DONE;
}
