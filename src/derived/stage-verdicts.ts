import type { Entry, Stage } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import { stageOf } from '../stages/index.ts';
import { isMissing, type Value } from '../values/value.ts';
import type { StageVerdict, StressRow } from './derived.ts';

/** A row whose ratio is there. */
interface Judged {
  readonly row: StressRow;
  readonly ratio: Value<'ratio'>;
}

/** One verdict for each stage that has stresses, in the trade's words: what is thin, what is comfortable, what cannot be judged. */
export function stageVerdicts(entry: Entry, stress: readonly StressRow[]): readonly StageVerdict[] {
  return entry.stages.flatMap((stage) => {
    const rows = stress.filter((row) => row.stage === stage.id && row.allowance === undefined);
    return rows.length === 0 ? [] : [verdictOf(stage, rows)];
  });
}

function verdictOf(stage: Stage, rows: readonly StressRow[]): StageVerdict {
  const judged = rows.flatMap((row): Judged[] => (isMissing(row.ratio) ? [] : [{ row, ratio: row.ratio }]));
  const room = comfortable(judged);
  const sentences = [...thin(judged), ...open(judged), ...close(judged), ...room, ...notJudged(rows, judged)];
  return { stage: stage.id, name: stageOf(stage.kind)?.name ?? stage.kind, sentences, comfortable: room[0] ?? null };
}

/** Above the rating, or above the line of the policy with the whole interval. */
function thin(judged: readonly Judged[]): readonly string[] {
  return judged
    .filter(({ row }) => row.verdict === 'over')
    .map(({ row, ratio }) => {
      const uses = `${partOf(row)} ${verb(row)} ${percent(ratio.nominal)} of ${its(row)} ${rated(row)}`;
      return ratio.low > 1 ? `${uses}: more than it is rated for.` : `${uses}: thin, the line is ${percent(row.limit ?? 1)}.`;
    });
}

/** The interval holds the line: what would settle it. */
function open(judged: readonly Judged[]): readonly string[] {
  return judged
    .filter(({ row }) => row.verdict === 'straddles')
    .map(({ row, ratio }) => {
      const span = `${percent(ratio.low)} to ${percent(ratio.high)}`;
      const why =
        row.methods === undefined
          ? 'depending on tolerances and assumptions'
          : `depending on which of ${row.methods.length} published methods is right`;
      return `${partOf(row)} ${verb(row)} ${span} of ${its(row)} ${rated(row)}, ${why}; ${toSettle(row)} settles it.`;
    });
}

/** From this share of its line a part within it is called close, not comfortable. */
const CLOSE = 0.95;

/** Within the line, and by how little. */
function close(judged: readonly Judged[]): readonly string[] {
  return judged
    .filter((one) => one.row.verdict === 'within' && share(one) >= CLOSE)
    .map(
      ({ row, ratio }) =>
        `${partOf(row)} ${verb(row)} ${percent(ratio.nominal)} of ${its(row)} ${rated(row)}: within the line of ${percent(row.limit ?? 1)}, with nothing to spare.`,
    );
}

/** The one that is nearest to its line speaks for all that have room. */
function comfortable(judged: readonly Judged[]): readonly string[] {
  const within = judged.filter((one) => one.row.verdict === 'within' && share(one) < CLOSE);
  const [first, ...rest] = within;
  if (first === undefined) return [];
  const { row, ratio } = rest.reduce((best, one) => (share(one) > share(best) ? one : best), first);
  const worst = `${partOf(row)} at ${percent(ratio.nominal)} of ${its(row)} ${rated(row)}`;
  return within.length === 1
    ? [`Comfortable: ${worst}.`]
    : [`Comfortable in ${within.length} ratings; the nearest to its line is ${worst}.`];
}

function share({ row, ratio }: Judged): number {
  return ratio.high / (row.limit ?? 1);
}

/** What cannot be said, and what has to be measured for it; each need once. */
function notJudged(rows: readonly StressRow[], judged: readonly Judged[]): readonly string[] {
  const withheld = rows.filter((row) => row.verdict === 'withheld');
  if (withheld.length === 0) return [];
  const inPart = (row: StressRow): boolean => judged.some((one) => one.row.references === row.references);
  const parts = [...new Set(withheld.map((row) => (inPart(row) ? `${partOf(row)} for its ${row.quantity}` : partOf(row))))];
  const needs = [...new Set(withheld.flatMap(({ ratio }) => (isMissing(ratio) ? ratio.needs : [])))];
  const names = parts.length > 4 ? `${parts.length} parts` : list(parts);
  const reasons = [...new Set(withheld.flatMap(({ ratio }) => (isMissing(ratio) ? [ratio.reason] : [])))];
  const ask = needs.length === 0 ? `: ${reasons.join('; ')}` : `; wanted: ${list(needs)}`;
  return [`Not judged: ${names}${ask}.`];
}

function toSettle({ quantity, stress }: StressRow): string {
  if (!isMissing(stress) && stress.dimension === 'current') return 'a current probe at full load';
  return /off-state|reverse|clamp/u.test(quantity) ? 'an oscilloscope on the part at the highest line' : 'a measured voltage on the part';
}

function partOf({ references, role }: StressRow): string {
  return `${list(references)} (${roleOf(role)?.name ?? role})`;
}

function verb({ references }: StressRow): string {
  return references.length === 1 ? 'uses' : 'use';
}

function its({ references }: StressRow): string {
  return references.length === 1 ? 'its' : 'their';
}

/** "650 V" without decimals that the marking does not have. */
function rated({ rating, quantity }: StressRow): string {
  if (isMissing(rating)) return quantity;
  const unit = rating.dimension === 'current' ? 'A' : 'V';
  return `${String(Number(rating.nominal.toPrecision(3)))} ${unit}`;
}

function percent(ratio: number): string {
  return `${String(Math.round(100 * ratio))} %`;
}

function list(words: readonly string[]): string {
  if (words.length < 3) return words.join(' and ');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}
