import { counted } from '../units/counted.ts';
import type { SheetSummary } from '../corpus/prepared.ts';
import type { MethodUses } from '../corpus/method-uses.ts';
import { escapeText } from '../figures/markup.ts';
import { formatInterval } from '../units/format.ts';
import { sideZone } from './zone.ts';

/** A use of a formula with the sheet that it stands on. */
type ShownUse = MethodUses['newest'][number] & { readonly sheet: Pick<SheetSummary, 'slug' | 'number' | 'maker' | 'name'> };

/** The sentence near the formula that leads to its uses. */
export function usedOn(sheets: number): string {
  return `Used on <a href="#D">${counted(sheets, 'sheet')}</a>. `;
}

/** The zone of the sheets that use a formula, each with one of its values. */
export function methodUseZone(uses: readonly ShownUse[], sheets: number): string {
  const how =
    sheets > uses.length
      ? `The newest ${String(uses.length)} of ${counted(sheets, 'sheet')}.`
      : `${counted(uses.length, 'sheet')}, newest first.`;
  return sideZone(
    { letter: 'D', title: 'Sheets that use it', label: 'Sheets that use it' },
    `<p>${how} Each with one of its values; the interval spans the corners of every input’s tolerance.</p>`,
    '<table class="stack"><thead><tr><th scope="col">No.</th><th scope="col">Device</th><th scope="col">Value of</th><th scope="col" class="n">Value</th><th scope="col" class="n">Interval</th></tr></thead>' +
      `<tbody>${uses.map(useRow).join('')}</tbody></table>`,
  );
}

function useRow({ sheet, label, others, value }: ShownUse): string {
  const { number, unit, interval } = formatInterval(value, value.dimension);
  const more = others > 0 ? `<span class="soft"> and ${counted(others, 'other')}</span>` : '';
  return (
    `<tr><td class="m1" data-head="No.">${escapeText(sheet.number ?? '–')}</td>` +
    `<th scope="row"><a href="/teardowns/${sheet.slug}/">${escapeText(`${sheet.maker} ${sheet.name}`)}</a></th>` +
    `<td class="full" data-head="Value of">${escapeText(label)}${more}</td>` +
    `<td class="n" data-head="Value">${escapeText(`${number} ${unit}`.trim())}</td><td class="n" data-head="Interval">${escapeText(interval ?? '–')}</td></tr>`
  );
}
