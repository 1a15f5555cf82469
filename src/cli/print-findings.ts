import { join, relative, sep } from 'node:path';
import { reportJson } from '../diagnostics/report-json.ts';
import { reportText } from '../diagnostics/report-text.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import { readText } from '../pipeline/read-text.ts';
import type { CommandStreams, TextSink } from './streams.ts';

/** Forms in which findings can be printed. */
export const FORMATS = ['text', 'json', 'sarif'] as const;
export type FindingsFormat = (typeof FORMATS)[number];

/** Prints findings with paths that can be opened from where the command was given. */
export async function printFindings(
  diagnostics: readonly Diagnostic[],
  content: string,
  format: FindingsFormat,
  sink: TextSink,
  streams: CommandStreams,
): Promise<void> {
  const here = diagnostics.map((diagnostic) => ({
    ...diagnostic,
    file: openable(join(content, ...diagnostic.file.split('/')), streams.cwd),
  }));
  if (format === 'json') sink.write(reportJson(here));
  else if (format === 'sarif') {
    // Only this form names every rule, and the rules are most of the program.
    const [{ reportSarif }, { allRules }] = await Promise.all([
      import('../diagnostics/report-sarif.ts'),
      import('../pipeline/all-rules.ts'),
    ]);
    sink.write(reportSarif(here, allRules()));
  } else
    sink.write(
      reportText(here, sourcesOf(diagnostics, content, streams.cwd), {
        colour: sink.isTTY === true && streams.env['NO_COLOR'] === undefined,
      }),
    );
}

/** Relative with forward slashes, or absolute where the content lies elsewhere. */
function openable(path: string, cwd: string): string {
  const near = relative(cwd, path);
  return (near.startsWith('..') ? path : near).split(sep).join('/');
}

function sourcesOf(diagnostics: readonly Diagnostic[], content: string, cwd: string): Map<string, string> {
  const sources = new Map<string, string>();
  for (const file of new Set(diagnostics.map((diagnostic) => diagnostic.file))) {
    const path = join(content, ...file.split('/'));
    const read = readText(path);
    if (read.ok) sources.set(openable(path, cwd), read.text);
  }
  return sources;
}
