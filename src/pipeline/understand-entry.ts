import { feedParts, type FactContradiction } from '../corpus/part-facts/feed-parts.ts';
import { doneByMethod } from '../derived/bench/done-by-method.ts';
import { logsOnBench } from '../derived/bench/logs-on-bench.ts';
import { readOnBench } from '../derived/bench/read-on-bench.ts';
import type { Derived } from '../derived/derived.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { NO_BENCH } from '../entry/bench.ts';
import type { Entry } from '../entry/entry.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import type { Table } from '../tables/table.ts';
import type { EntrySteps, SplitFile } from './entry-steps.ts';
import type { EntrySurroundings } from './entry-surroundings.ts';
import type { GuardedStep } from './guarded-step.ts';
import type { EntryLog } from './logs-of-entries.ts';
import { pipelineFinding } from './pipeline-rule.ts';
import type { EntryFile } from './scan-content.ts';

/** What became of the frontmatter of one file; null where it gave no entry, or a step failed. */
export interface UnderstoodEntry {
  /** As the entry states it, before fact sheets and bench. */
  readonly asStated: Entry | null;
  /** With what the fact sheets of its parts and the bench add. */
  readonly entry: Entry | null;
  readonly derived: Derived | null;
  /** Tables for which there are data. */
  readonly tables: readonly Table[];
}

/** Reads the frontmatter to an entry, computes everything, and runs the checks. Adds what is wrong to `findings`. */
export function understandEntry(
  { slug, file }: EntryFile,
  frontmatter: unknown,
  split: SplitFile,
  { steps, around, guard, findings }: { steps: EntrySteps; around: EntrySurroundings; guard: GuardedStep; findings: Finding[] },
): UnderstoodEntry {
  const read = frontmatter === undefined ? null : guard('entry', null, () => steps.read({ slug, file, frontmatter }));
  findings.push(...(read?.findings ?? []));
  const asStated = read?.entry ?? null;
  const entry = asStated === null ? null : guard('fact sheets and bench', null, () => completed(asStated, around, findings));
  if (entry === null) return { asStated, entry, derived: null, tables: [] };
  const { logs = [], bench = NO_BENCH, derating } = around;
  const derived = guard('derived', null, () => steps.derive(entry, logsOnBench(logSummaries(logs, entry), entry, bench), derating));
  if (derived === null) return { asStated, entry, derived, tables: [] };
  const tables = steps.tables
    .map((table) => guard(`table ${table.id}`, null, () => table.run({ entry, derived })))
    .filter((table) => table !== null);
  const input = { entry, derived, text: split.text, textStart: split.textStart };
  for (const check of steps.checks) findings.push(...guard(`check ${check.id}`, [], () => check.run(input)));
  return { asStated, entry, derived, tables };
}

/** The entry with what the fact sheets of its parts and the bench say of it. */
function completed(asStated: Entry, { facts, bench = NO_BENCH }: EntrySurroundings, findings: Finding[]): Entry {
  const fed = feedParts(asStated, facts);
  const onBench = readOnBench(fed.entry, bench);
  const byMethod = doneByMethod(onBench.entry, bench);
  findings.push(
    ...fed.contradictions.map(contradictionFinding),
    ...onBench.unknown.map(({ path, message }) => pipelineFinding('instrument-unknown', message, { in: 'data', path, part: 'value' })),
    ...byMethod.unknown.map(({ path, message }) => pipelineFinding('method-unknown', message, { in: 'data', path, part: 'value' })),
  );
  return byMethod.entry;
}

function contradictionFinding({ part, field, message }: FactContradiction): Finding {
  const finding = pipelineFinding('part-against-fact-sheet', message, { in: 'data', path: [...part.path, field], part: 'value' });
  return { ...finding, subject: part.references.join(', ') };
}

/** The logs that could be read, each with its port by the name that the entry gives it. */
function logSummaries(logs: readonly EntryLog[], entry: Entry): readonly LogSummary[] {
  return logs
    .map(({ summary }) => summary)
    .filter((summary) => summary !== null)
    .map((summary) => ({ ...summary, port: entry.logs.find(({ id }) => id === summary.id)?.port ?? summary.port }));
}
