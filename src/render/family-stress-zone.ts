import { sentenceCase } from '../units/sentence-case.ts';
import { familyStress, type FamilyStress } from '../corpus/family/family-stress.ts';
import type { TopologyFamily } from '../corpus/topology-families.ts';
import { familyStrip, familyStripAxis } from '../figures/family-strip.ts';
import { escapeText } from '../figures/markup.ts';
import { markWith } from './mark.ts';
import { stackCell } from './stack-table.ts';
import { sideZone, type ZoneFrame } from './zone.ts';

/** Stress over rating of every sheet of a family, one row a role and quantity. */
export function familyStressZone(zone: ZoneFrame, family: TopologyFamily): string {
  const rows = familyStress(family.members.map((member) => member.sheet));
  const matter = rows.length === 0 ? '<p>No stress of this family is known yet.</p>' : stripTable(rows);
  return sideZone(zone, sideWords(rows), matter);
}

function sideWords(rows: readonly FamilyStress[]): string {
  const thin = rows.filter((row) => row.isOver).map((row) => row.name);
  const over = thin.length === 0 ? '' : ` Over the limit somewhere in the family: ${escapeText(thin.join('; '))}.`;
  return (
    `<p>One mark a sheet, its worst, on the scale of stress over rating.${over}</p>` +
    '<p class="note ruled">The heavy tick is the derating limit that most sheets are judged by. Triangles are over the limit of their own sheet. ' +
    'A row with fewer sheets than the family had its verdict withheld, or the part not identified. An indication, not a compliance verdict.</p>'
  );
}

function stripTable(rows: readonly FamilyStress[]): string {
  const head =
    `<tr><th scope="col">Role and stress</th><th scope="col" class="bar-col">${familyStripAxis()} <span class="vh">Ratio, drawn</span></th>` +
    '<th scope="col" class="n">Median</th><th scope="col" class="n">Worst</th><th scope="col" class="n">Sheets</th></tr>';
  return `<table class="stack strips"><thead>${head}</thead><tbody>${rows.map(rowOf).join('')}</tbody></table>`;
}

function rowOf(row: FamilyStress): string {
  const worst = row.worst.toFixed(2);
  const judged = row.isOver ? markWith('over', ` <span class="vh">over </span><span class="q">${worst}</span>`) : worst;
  return (
    `<tr><th scope="row" class="full role">${escapeText(sentenceCase(row.name))}</th><td class="bar-col full">${familyStrip(row)}</td>` +
    `${stackCell('Median', row.median.toFixed(2), 'n')}${stackCell('Worst', judged, 'n')}${stackCell('Sheets', row.marks.length, 'n')}</tr>`
  );
}
