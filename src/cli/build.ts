import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { buildSite, type BuildOutcome } from '../pipeline/build-site.ts';
import { baseReminder } from './base-reminder.ts';
import type { Command } from './command.ts';
import { basePath, contentFolder, placesOf } from './places.ts';
import { printFindings } from './print-findings.ts';
import { progressOn } from './progress.ts';
import { DONE, FAILED, WRONG_USAGE, type CommandStreams } from './streams.ts';
import { counted } from '../units/counted.ts';

export const build: Command = {
  name: 'build',
  operand: '',
  meaning: 'check, build the site, check its links, and put it in place',
  options: ['content', 'out', 'base'],
  run: (_, options, streams) =>
    buildInto(
      { content: contentFolder(options, streams), out: resolve(streams.cwd, options.text('out') ?? 'dist'), base: basePath(options) },
      streams,
    ),
};

interface BuildRequest {
  readonly content: string;
  readonly out: string;
  readonly base: string;
}

/** Builds a site and says how it went; the exit code is that of the command. */
export async function buildInto({ content, out, base }: BuildRequest, streams: CommandStreams): Promise<number> {
  const places = placesOf(content, streams);
  const progress = progressOn(streams.stderr);
  const outcome = await buildSite({
    ...places,
    out,
    base,
    keepUnchanged: true,
    onProgress: (what, done, total) => {
      progress.say(
        what === 'entries'
          ? `${String(done)} of ${String(total)} entries read`
          : what === 'photos'
            ? `${String(done)} of ${String(total)} photos made`
            : what === 'pages'
              ? 'building the pages'
              : 'checking the pages',
      );
    },
  });
  progress.clear();
  if ('prepared' in outcome && outcome.prepared.diagnostics.length > 0)
    await printFindings(outcome.prepared.diagnostics, content, 'text', streams.stderr, streams);
  const reminder = outcome.ended === 'published' ? baseReminder(outcome.prepared.site.address, base) : null;
  if (reminder !== null) streams.stderr.write(`${reminder}\n`);
  return conclude(outcome, out, streams);
}

function conclude(outcome: BuildOutcome, out: string, { stdout, stderr }: CommandStreams): number {
  const kept = existsSync(out) ? `${out} is as it was.\n` : '\n';
  switch (outcome.ended) {
    case 'published': {
      const count = outcome.prepared.slugs.length;
      stdout.write(
        `${counted(count, 'teardown')} published in ${out}${outcome.unchanged ? '; nothing has changed since the last build' : ''}\n`,
      );
      return DONE;
    }
    case 'errors in content':
      stderr.write(`Nothing was published: the content has errors. ${kept}`);
      return FAILED;
    case 'output refused':
      stderr.write(`${outcome.reason}\n`);
      return WRONG_USAGE;
    case 'pages failed':
      stderr.write(`The pages could not be built. ${kept}${outcome.reason}\n`);
      return FAILED;
    case 'faults in output':
      for (const { page, message } of outcome.faults) stderr.write(`${page}: ${message}\n`);
      stderr.write(`Nothing was published: ${counted(outcome.faults.length, 'fault')} in the finished pages. ${kept}`);
      return FAILED;
  }
}
