import { MOST_COMPARED } from '../corpus/comparison-address.ts';
import type { NearSheet } from '../corpus/likeness/nearest-sheets.ts';
import type { SheetRank } from '../corpus/sheet-ranks.ts';
import { escapeText } from '../figures/markup.ts';
import type { SheetBeside } from '../corpus/sheet-beside.ts';
import type { SheetZone } from './sheet-zone.ts';
import { sentence } from './words.ts';
import { ordinal } from './ordinal.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** The nearest sheets with the evidence, and the sheet's places among comparable ones; null where there is neither. */
export function besideZone(
  { near, pair, ranks }: SheetBeside,
  sheet: { readonly slug: string; readonly topology: string },
  scatter: string,
): SheetZone | null {
  if (near.length === 0 && ranks.length === 0 && scatter === '') return null;
  const lead =
    near.length === 0
      ? '<p>No other sheet shares anything with this one that most do not share.</p>'
      : '<p>Nearest by stages, chips, switches, values, ports, size and power; what few sheets have says more than what many have.</p>';
  return {
    title: 'Closest other sheets',
    layout: 'side',
    side: `${lead}${rankList(ranks)}`,
    matter: (near.length === 0 ? '' : nearTable(near, sheet.topology) + compareLink(near, pair, sheet.slug)) + scatter,
  };
}

function nearTable(near: readonly NearSheet[], topology: string): string {
  return (
    '<table class="near"><caption class="vh">The nearest sheets, nearest first, with what they share.</caption>' +
    '<thead><tr><th scope="col">No.</th><th scope="col">Device</th><th scope="col">What they share</th><th scope="col" class="n">Likeness</th></tr></thead>' +
    `<tbody>${near.map((sheet) => nearRow(sheet, topology)).join('')}</tbody></table>`
  );
}

/** The sheet and its nearest side by side. */
function compareLink(near: readonly NearSheet[], pair: string | null, slug: string): string {
  const slugs = [slug, ...near.map((sheet) => sheet.slug)].slice(0, MOST_COMPARED);
  const nearest = pair === null ? '' : `<a href="/compare/${pair}/">The nearest side by side with this sheet</a> · `;
  return `<p class="note under">${nearest}<a href="/compare/?sheets=${slugs.join(',')}">${String(slugs.length)} side by side</a></p>`;
}

function nearRow(sheet: NearSheet, topology: string): string {
  const name = `<a href="/teardowns/${sheet.slug}/"><b>${escapeText(`${sheet.maker} ${sheet.name}`)}</b></a>`;
  // The same topology stands among the evidence already.
  const stages = sheet.topology === topology ? '' : `<span class="sub">${unbroken(escapeText(sheet.topology))}</span>`;
  return (
    `<tr><td class="m1">${escapeText(sheet.number ?? '–')}</td><th scope="row">${name}${stages}</th>` +
    `<td class="what">${platformWords(sheet)}${evidenceWords(sheet)}</td>` +
    `<td class="n" data-head="Likeness">${sheet.likeness.toFixed(2)}</td></tr>`
  );
}

/** "Same controllers VLR-27S, VLR-81C; same four-port layout; and 16 more." */
function evidenceWords({ evidence }: NearSheet): string {
  const more = evidence.others === 0 ? [] : [`and ${String(evidence.others)} more`];
  return `${unbroken(sentence(sentenceCase([...evidence.words, ...more].join('; '))))}.`;
}

/** Edges of a size and counts of stages stay on one line. */
function unbroken(html: string): string {
  return html.replaceAll(' × ', '\u00a0×\u00a0');
}

function platformWords({ platform }: NearSheet): string {
  if (platform === null) return '';
  const otherLabel = platform.differs.some((words) => words.startsWith('label '));
  const differs = platform.differs.length === 0 ? 'nothing that both sheets state' : platform.differs.join('; ');
  return (
    `<span class="platform"><b>${otherLabel ? 'Same platform under another label.' : 'Same platform.'}</b> ` +
    `Same stages, controllers and switches, and at least seven in ten values. What differs: ${unbroken(sentence(differs))}.</span> `
  );
}

const MEASURES = { density: 'Density', efficiency: 'Efficiency', 'specific power': 'Power by mass' } as const;

function rankList(ranks: readonly SheetRank[]): string {
  if (ranks.length === 0) return '';
  const items = ranks.map(
    ({ measure, place, of, among }) =>
      `<li><b>${MEASURES[measure]}</b> <span class="q">${ordinal(place)} of ${String(of)}</span> <span class="soft">${sentence(among)}</span></li>`,
  );
  return `<p class="label ruled">Place among comparable sheets</p><ul class="lines ranks">${items.join('')}</ul>`;
}
