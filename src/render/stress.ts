import { escapeText, percent } from '../figures/markup.ts';
import { stressBar, STRESS_SCALE_END } from '../figures/stress-bar.ts';
import type { Derived, StressRow } from '../derived/derived.ts';
import { roleOf } from '../roles/index.ts';
import { isMissing } from '../values/value.ts';
import { markWith } from './mark.ts';
import { fixedNumber, quantity } from './quantity.ts';
import { partAnchor, referenceList } from './references.ts';
import { sentence } from './words.ts';

/** Name of a role as the trade says it. */
export function roleName(role: string): string {
  return roleOf(role)?.name ?? role.replaceAll('-', ' ');
}

/** Stress against rating: one row a part, bar on the ratio scale, verdict with its limit. On a phone two lines a part. */
export function stressView(derived: Derived): string {
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1]
    .map((at) => `<text class="${at === 0 ? 'num' : 'num mid'}" x="${percent(at / STRESS_SCALE_END)}" y="14">${at.toFixed(1)}</text>`)
    .join('');
  const axis = `<svg class="fig axis" aria-hidden="true" height="16" width="100%">${ticks}</svg>`;
  return (
    '<table class="stress-table"><caption class="vh">Stress against rating: each part with its worst stress, its rating, their ratio and the verdict.</caption>' +
    `<thead><tr><th scope="col">Part</th><th scope="col">Stress</th><th scope="col" class="n">Value</th><th scope="col" class="bar-col">${axis}<span class="vh">Ratio, drawn</span></th>` +
    `<th scope="col" class="n">Rating</th><th scope="col" class="n">Ratio</th><th scope="col">Verdict</th></tr></thead><tbody>${derived.stress.map(stressRow).join('')}</tbody></table>` +
    policyNote(derived) +
    methodsNote(derived.stress)
  );
}

/** Which policy the limit ticks are those of, and for whom it was written. */
function policyNote({ derating: { title, meaning, isOwn } }: Derived): string {
  const owner = isOwn ? ', a policy of this site’s own' : '';
  return `<p class="note under">Limit ticks: ${escapeText(title)}${owner}. ${sentence(meaning)}</p>`;
}

/** The published methods where papers disagree and an interval is their range. */
function methodsNote(rows: readonly StressRow[]): string {
  const methods = [...new Set(rows.flatMap((row) => row.methods ?? []))];
  if (methods.length === 0) return '';
  return `<p class="note under">A voltage “with spike” is the range of published methods: ${escapeText(methods.join('; '))}.</p>`;
}

function stressRow(row: StressRow, index: number): string {
  const ratio = isMissing(row.ratio) ? null : row.ratio;
  const bar = stressBar({ ratio, limit: row.limit, verdict: row.verdict });
  const first = row.references[0] ?? '';
  const value = isMissing(row.stress)
    ? `<td class="n v why">${sentence(needs(row.stress))}</td>`
    : `<td class="n v">${quantity(row.stress)}</td>`;
  const rating = isMissing(row.rating) ? '<td class="n r why">–</td>' : `<td class="n r">${quantity(row.rating)}${transient(row)}</td>`;
  return (
    `<tr id="stress-${index + 1}"><th scope="row" class="ref"><a href="#${partAnchor(first)}">${escapeText(referenceList(row.references))}</a></th>` +
    `<td class="what">${escapeText(roleName(row.role))}, ${escapeText(row.quantity)}${row.corner === undefined ? '' : ` <span class="soft">${sentence(row.corner)}</span>`}</td>${value}<td class="bar-col">${bar}</td>${rating}` +
    `<td class="n x">${ratio === null ? '–' : fixedNumber(ratio.nominal, 2)}</td><td class="verdict">${verdict(row)}</td></tr>`
  );
}

/** What the part stands for moments only; it never judges. */
function transient({ transientRating }: StressRow): string {
  if (transientRating === undefined || isMissing(transientRating)) return '';
  return ` <span class="soft">(${quantity(transientRating)} transient)</span>`;
}

function verdict(row: StressRow): string {
  if (row.verdict === 'withheld') return markWith('withheld', 'withheld');
  return markWith(row.verdict, `${row.verdict}${row.limit === null ? '' : ` <span class="mono">${fixedNumber(row.limit, 2)}</span>`}`);
}

function needs(missing: { readonly reason: string; readonly needs: readonly string[] }): string {
  return missing.needs.length === 0 ? missing.reason : `${missing.needs.join(', ')} missing`;
}

/** The worst judgement of a part, for the last column of the part table. */
export function worstStress(
  stress: readonly StressRow[],
  references: readonly string[],
): { readonly row: StressRow; readonly index: number } | null {
  let worst: { row: StressRow; index: number } | null = null;
  stress.forEach((row, index) => {
    if (!row.references.some((reference) => references.includes(reference))) return;
    if (worst === null || margin(row) < margin(worst.row)) worst = { row, index };
  });
  return worst;
}

/** Room below the limit; a withheld verdict comes after every given one. */
function margin(row: StressRow): number {
  return isMissing(row.ratio) ? Number.POSITIVE_INFINITY : (row.limit ?? 1) - row.ratio.nominal;
}

/** Counts by mark with the parts named, as "In short" lists them. */
export function stressCounts(stress: readonly StressRow[]): string {
  const of = (name: StressRow['verdict']): readonly StressRow[] => stress.filter((row) => row.verdict === name);
  const names = (rows: readonly StressRow[]): string =>
    [...new Set(rows.map((row) => referenceList(row.references).replaceAll(' · ', '\u00a0·\u00a0')))].join(', ');
  const line = (name: StressRow['verdict'], words: (count: number) => string, named: boolean): string => {
    const rows = of(name);
    return rows.length === 0
      ? ''
      : `<li>${markWith(name, `<b class="ink">${rows.length}</b> <span class="ink">${words(rows.length)}${named ? `: <span class="q wrap">${escapeText(names(rows))}</span>` : ''}</span>`)}</li>`;
  };
  const items =
    line('over', (count) => `${count === 1 ? 'stress' : 'stresses'} over the derating limit`, true) +
    line('straddles', (count) => `${count === 1 ? 'straddles' : 'straddle'} it`, true) +
    line('withheld', (count) => `${count === 1 ? 'verdict' : 'verdicts'} withheld`, of('withheld').length < 6) +
    line('within', () => 'within', false);
  return items === '' ? '' : `<ul class="counts">${items}</ul>`;
}
