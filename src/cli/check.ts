import { hasErrors } from '../diagnostics/has-errors.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import { prepare } from '../pipeline/prepare.ts';
import type { Command, GivenOptions } from './command.ts';
import { contentFolder, placesOf } from './places.ts';
import { FORMATS, printFindings, type FindingsFormat } from './print-findings.ts';
import { progressOn } from './progress.ts';
import { DONE, FAILED, type CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';
import { counted } from '../units/counted.ts';

export const check: Command = {
  name: 'check',
  operand: '',
  meaning: 'read every entry and report every finding',
  options: ['content', 'format'],
  run: runCheck,
};

async function runCheck(_: string, options: GivenOptions, streams: CommandStreams): Promise<number> {
  const format = formatOf(options);
  const places = placesOf(contentFolder(options, streams), streams);
  const progress = progressOn(streams.stderr);
  const { diagnostics, counts } = await prepare({
    ...places,
    mode: 'check',
    onProgress: (done, total) => {
      progress.say(`${String(done)} of ${String(total)} entries read`);
    },
    onPhoto: (done, total) => {
      progress.say(`${String(done)} of ${String(total)} photos looked at`);
    },
  });
  progress.clear();
  await printFindings(diagnostics, places.content, format, streams.stdout, streams);
  if (format === 'text')
    streams.stdout.write(
      `${counted(counts.entries, 'entry', 'entries')} checked, ${String(counts.drafts)} of them ${counts.drafts === 1 ? 'a draft' : 'drafts'}\n`,
    );
  return hasErrors(diagnostics) ? FAILED : DONE;
}

function formatOf(options: GivenOptions): FindingsFormat {
  const given = options.text('format') ?? 'text';
  const format = FORMATS.find((name) => name === given);
  if (format === undefined) throw new WrongUsage(`--format must be text, json or sarif, not "${given}"${didYouMean(given, FORMATS)}`);
  return format;
}
