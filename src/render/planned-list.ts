import type { SheetSummary } from '../corpus/prepared.ts';
import { escapeText } from '../figures/markup.ts';

/** No page lists more; the others are opened from their sheets. */
const LISTED = 200;

type Planned = Pick<SheetSummary, 'slug' | 'maker' | 'name' | 'hasPlanner'>;

/** What stands in place of the planner's form without a script: the sheets that have usual sets of devices planned. */
export function plannedList(sheets: readonly Planned[]): string {
  const listed = listedSheets(sheets);
  const words =
    listed.length === 0
      ? '<p>No sheet has two output ports or more whose shares are known.</p>'
      : '<p>The form needs a script. Without one, each of these sheets has usual sets of devices planned under <b>In short</b>.</p>';
  return `${words}<ul class="lines planned">${listed.map(({ slug, name }) => `<li><a href="/teardowns/${slug}/">${name}</a></li>`).join('')}</ul>`;
}

/** The same sheets as choices of the form. */
export function plannedOptions(sheets: readonly Planned[]): string {
  return listedSheets(sheets)
    .map(({ slug, name }) => `<option value="${slug}">${name}</option>`)
    .join('');
}

/** Words on those that are not listed; nothing where all are. */
export function plannedRest(sheets: readonly Planned[]): string {
  return sheets.filter((sheet) => sheet.hasPlanner).length > LISTED
    ? ` <span class="note">The newest ${String(LISTED)}; others open the planner from their own pages.</span>`
    : '';
}

function listedSheets(sheets: readonly Planned[]): readonly { readonly slug: string; readonly name: string }[] {
  return sheets
    .filter((sheet) => sheet.hasPlanner)
    .slice(0, LISTED)
    .map(({ slug, maker, name }) => ({ slug, name: escapeText(name.startsWith(maker) ? name : `${maker} ${name}`) }));
}
