import { join } from 'node:path';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { EntrySteps } from './entry-steps.ts';
import type { FileFinding } from './pipeline-rule.ts';
import { atTop } from './at-top.ts';
import { readText } from './read-text.ts';

/** Gives findings that were made without the text of their file a place in it; the text is read again only where that is needed. */
export async function placeInFiles(content: string, findings: readonly FileFinding[], given: EntrySteps | null): Promise<Diagnostic[]> {
  const placed: Diagnostic[] = [];
  for (const [file, group] of Map.groupBy(findings, (each) => each.file)) {
    const inside = group.map(({ finding }) => finding).filter((finding) => finding.where.in !== 'file');
    placed.push(...group.filter(({ finding }) => finding.where.in === 'file').map(({ finding }) => atTop(file, finding)));
    if (inside.length === 0) continue;
    const steps = given ?? (await import('./own-steps.ts')).OWN_STEPS;
    const read = readText(join(content, ...file.split('/')));
    placed.push(...(read.ok ? steps.place({ file, text: read.text }, inside) : inside.map((finding) => atTop(file, finding))));
  }
  return placed;
}
