import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { LogFile } from '../../src/entry/entry.ts';
import { readLog, type LogReading } from '../../src/pipeline/read-log.ts';
import { formatInterval } from '../../src/units/format.ts';
import { isMissing, type Known } from '../../src/values/value.ts';
import { contentFolder, entryText, temporaryFolder } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

export const NAMED = '    columns: { time: "t (s)", voltage: "U (V)", current: "I (A)" }\n';

/** Findings of an entry with one log, "file:line:column rule: message". */
export async function findingsOf(csv: string | Uint8Array | null, more = NAMED): Promise<string[]> {
  const entry = entryText('A', 'x\n', `logs:\n  run:\n    file: run.csv\n${more}`);
  const log: Record<string, string | Uint8Array> = csv === null ? {} : { 'teardowns/a/run.csv': csv };
  const { diagnostics } = await prepareIn(contentFolder({ 'teardowns/a/index.md': entry, ...log }));
  return diagnostics
    .filter(({ rule }) => rule.startsWith('log-') || rule.startsWith('file-') || rule === 'internal-fault')
    .map(({ file, line, column, rule, message }) => `${file.replace('teardowns/a/', '')}:${line}:${column} ${rule}: ${message}`);
}

export async function readingOf(csv: string, more: Partial<LogFile> = {}): Promise<LogReading> {
  const path = join(temporaryFolder(), 'run.csv');
  writeFileSync(path, csv);
  return readLog(path, logFile(more));
}

export function logFile(more: Partial<LogFile> = {}): LogFile {
  return {
    ...{ id: 'run', file: 'run.csv', columns: { time: 't (s)', voltage: 'U (V)', current: 'I (A)' }, decimal: 'point' },
    ...{ port: null, line: null, ambient: null, events: {}, instrument: null, method: null, note: null, path: ['logs', 'run'] },
    ...more,
  };
}

export function printed(known: Known | undefined): string {
  if (known === undefined) return 'nothing';
  return isMissing(known) ? known.reason : formatInterval(known, known.dimension).text.replace('\u202F', ' ');
}

/** Twenty volts and two amperes for six minutes, a row every ten seconds. */
export function steadyRows(separator = ',', end = '\n'): string {
  return Array.from({ length: 37 }, (_, row) => [row * 10, '20.00', '2.000'].join(separator) + end).join('');
}
