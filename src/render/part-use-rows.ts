import type { PartUse } from '../corpus/part-uses.ts';
import { escapeText } from '../figures/markup.ts';
import { roleWords } from './role-words.ts';

const NOT_FOUND = '<span class="faded">– none found</span>';
const NOT_MARKED = '<span class="faded">– not marked</span>';

/**
 * Rows of the table of a part’s uses, as text and not as components: a part of many sheets has thousands of them, and the page is
 * made for each of its pages.
 */
export function partUseRows(uses: readonly PartUse[], withMaker: boolean): string {
  return uses.map((use) => rowOf(use, withMaker)).join('');
}

function rowOf({ sheet, references, role, stage, rating, maker }: PartUse, withMaker: boolean): string {
  const device = `<a href="/teardowns/${sheet.slug}/"><b>${escapeText(`${sheet.maker} ${sheet.name}`)}</b></a>`;
  return (
    `<tr><td class="m1" data-head="No.">${escapeText(sheet.number ?? '–')}</td><th scope="row">${device}</th>` +
    `<td class="m1 long" data-head="Ref."><b>${escapeText(references.join(' · '))}</b></td><td data-head="Role">${escapeText(roleWords(role))}</td>` +
    `<td data-head="Stage">${escapeText(stage)}</td><td class="long full${rating === null ? '' : ' m1'}" data-head="Rating as found">${rating === null ? NOT_FOUND : escapeText(rating)}</td>` +
    `${withMaker ? `<td data-head="Maker">${maker === null ? NOT_MARKED : escapeText(maker)}</td>` : ''}</tr>`
  );
}
