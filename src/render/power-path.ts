import { powerPathFigure } from '../figures/power-path/power-path.ts';
import { escapeText } from '../figures/markup.ts';
import type { PowerPath } from '../derived/power-path/power-path.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { powerPathTable } from '../tables/power-path.ts';
import { isMissing, type Value } from '../values/value.ts';
import { partAnchor } from './references.ts';
import type { SheetZone } from './sheet-zone.ts';
import { fold } from './fold.ts';
import { tableView } from './table-view.ts';
import { deviceName } from './device-name.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { sentence } from './words.ts';

/** The way of the power from the supply to the ports, with the same numbers as a table below. */
export function powerPathZone({ entry, derived, placed }: PreparedSheet): SheetZone | null {
  const { path } = derived;
  if (path === null || placed.includes('power-path')) return null;
  const figure = powerPathFigure({
    id: 'path',
    name: deviceName(entry),
    path,
    familyLink: `/topologies/${derived.family}/`,
    partLink: (reference) => `#${partAnchor(reference)}`,
  });
  const table = powerPathTable.build({ entry, derived });
  const rows = table === null ? '' : fold('The same as a table', tableView(table), 'path-table');
  return {
    title: 'Power path',
    layout: 'full',
    side: leadOf(path),
    matter: `${figure}<p class="note under">Width of the band is power, in W. ${sentence(path.notes.join(' '))} Blocks lead to the topology family, references to the parts.</p>${rows}`,
  };
}

function leadOf({ set, input, output, loss, basis, source }: PowerPath): string {
  const about = basis === 'by efficiency' ? 'about ' : '';
  const start = set === null ? '' : `${escapeText(set)} `;
  if (isMissing(output)) return `${start}No power is known.`;
  const into = isMissing(input)
    ? 'What goes in is not known'
    : `${sentenceCase(about)}${watts(input)} ${source.kind === 'battery' ? 'leaves the cells' : 'goes in'}`;
  const heat = isMissing(loss) ? '' : `, ${about}${watts(loss)} stays as heat`;
  return `${start}${into}, ${watts(output)} comes out${heat}.`;
}

function watts(power: Value<'power'>): string {
  return `<span class="q">${power.nominal.toFixed(1)} W</span>`;
}
