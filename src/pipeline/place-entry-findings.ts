import type { Diagnostic, Finding } from '../diagnostics/finding.ts';
import type { Answer } from '../entry/entry.ts';
import { atTop } from './at-top.ts';
import type { EntrySteps } from './entry-steps.ts';
import { stepFailed } from './guarded-step.ts';
import type { EntryLog } from './logs-of-entries.ts';
import type { PartsFile } from './parts-file.ts';
import type { FileFinding } from './pipeline-rule.ts';
import type { EntryFile } from './scan-content.ts';

/** The files that findings of an entry can stand in. */
export interface EntryFiles {
  readonly source: EntryFile;
  readonly text: string;
  readonly parts: PartsFile;
  readonly logs: readonly EntryLog[];
}

/** The findings of an entry at their places: in its file, in its spreadsheet, in its logs. */
export function placeEntryFindings(
  { source, text, parts, logs }: EntryFiles,
  findings: readonly Finding[],
  answers: readonly Answer[],
  steps: EntrySteps,
): Diagnostic[] {
  const moved = findings.map((finding) => ({ finding, to: parts.inSpreadsheet(finding) }));
  const here = moved.filter(({ to }) => to === null).map(({ finding }) => finding);
  const inCells = moved.map(({ to }) => to).filter((to) => to !== null);
  const elsewhere = [...parts.elsewhere, ...inCells, ...inLogFiles(source, logs)];
  return [...placed({ file: source.file, text }, here, answers, steps), ...elsewhere.map(({ file, finding }) => atTop(file, finding))];
}

function inLogFiles({ file }: EntryFile, logs: readonly EntryLog[]): readonly FileFinding[] {
  const folder = file.slice(0, file.lastIndexOf('/'));
  return logs.flatMap((log) => log.inFile.map((finding) => ({ file: `${folder}/${log.file}`, finding })));
}

/** Where placing itself fails, the findings are reported at the top of the file. */
function placed(
  source: { readonly file: string; readonly text: string },
  findings: readonly Finding[],
  answers: readonly Answer[],
  steps: EntrySteps,
): readonly Diagnostic[] {
  try {
    return steps.place(source, findings, answers);
  } catch (error) {
    return [...findings, stepFailed('places', error)].map((finding) => atTop(source.file, finding));
  }
}
