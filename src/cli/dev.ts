import { startDev } from '../pipeline/dev-site.ts';
import type { Prepared } from '../pipeline/prepare.ts';
import type { Command, GivenOptions } from './command.ts';
import { basePath, contentFolder, placesOf, portOf } from './places.ts';
import { printFindings } from './print-findings.ts';
import type { CommandStreams } from './streams.ts';
import { counted } from '../units/counted.ts';

export const dev: Command = {
  name: 'dev',
  operand: '',
  meaning: 'serve the site while you write; drafts and findings are shown',
  options: ['content', 'base', 'port'],
  run: runDev,
};

async function runDev(_: string, options: GivenOptions, streams: CommandStreams): Promise<number> {
  const places = placesOf(contentFolder(options, streams), streams);
  const session = await startDev({
    ...places,
    base: basePath(options),
    port: portOf(options).port,
    onPrepared: (prepared) => tell(prepared, places.content, streams),
    onFault: (message) => void streams.stderr.write(`The content could not be read again: ${message}\n`),
    onServer: (line) => void streams.stdout.write(`${line}\n`),
  });
  const stop = (): void => {
    session.stop();
  };
  if (streams.stop?.aborted === true) stop();
  streams.stop?.addEventListener('abort', stop, { once: true });
  return session.ended;
}

async function tell({ diagnostics, counts }: Prepared, content: string, streams: CommandStreams): Promise<void> {
  if (diagnostics.length > 0) await printFindings(diagnostics, content, 'text', streams.stderr, streams);
  streams.stdout.write(`${counted(counts.entries, 'entry', 'entries')}, ${String(counts.parsed)} of them read anew\n`);
}
