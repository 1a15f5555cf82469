import { counted } from '../units/counted.ts';
import { familiesByPower, type PowerClassFamilies } from '../corpus/family/families-by-power.ts';
import type { TopologyFamily } from '../corpus/topology-families.ts';
import { escapeText } from '../figures/markup.ts';
import { glyphChain } from '../figures/stage-glyph.ts';
import { stackCell, stackTable } from './stack-table.ts';
import { ZONE_END, sideZone, zoneList, zoneStart } from './zone.ts';

const OPEN = { letter: 'A', title: null, label: 'Topologies' } as const;
const FAMILIES = { letter: 'B', title: 'Families', label: 'Families' } as const;
const BY_POWER = { letter: 'C', title: 'By power class', label: 'By power class' } as const;

/** Zones of the list of topology families. */
export function topologyIndexZones(families: readonly TopologyFamily[]): string {
  const howMany = families.length === 0 ? '' : ` ${counted(families.length, 'family', 'families')} so far, the largest first.`;
  const lead = `${FORMED}${howMany}`;
  const byPower = familiesByPower(families);
  return (
    `${zoneStart(OPEN)}<h1>Topologies</h1><p class="lead under">${lead}</p>${zoneList([OPEN, FAMILIES, BY_POWER])}${ZONE_END}` +
    sideZone(FAMILIES, FAMILY_WORDS, families.length === 0 ? NO_FAMILY : familyTable(families)) +
    sideZone(BY_POWER, '<p>Which families serve which rated output.</p>', byPower.length === 0 ? NO_RATING : powerTable(byPower))
  );
}

const FORMED =
  'Sheets whose power goes through the same converters form a family: the isolated ones and those that shape the input current, or all of ' +
  'them where nothing is isolated.';
const FAMILY_WORDS =
  '<p>Each family has a page with its chain, its members and their numbers side by side.</p>' +
  '<p class="note ruled">Power classes by rated output are our own grouping. Densities are of the closed case unless a sheet says otherwise.</p>';
const NO_FAMILY = '<p class="lead">No sheet is published yet, so there is no family to show.</p>';
const NO_RATING = '<p class="lead">No rated output is known yet.</p>';

function familyTable(families: readonly TopologyFamily[]): string {
  const heads = ['Family', ['Sheets', 'n'], 'Power classes', ['Median W/cm³', 'n']] as const;
  return stackTable(heads, `<tbody>${families.map(familyRow).join('')}</tbody>`);
}

function familyRow(family: TopologyFamily): string {
  const link = `<a class="fam" href="/topologies/${family.id}/"><b>${escapeText(family.name)}</b></a>`;
  const chain = glyphChain(family.chain.map((block) => block.kind));
  return (
    `<tr><th scope="row" class="full">${link} ${chain}</th>${stackCell('Sheets', family.members.length, 'n')}` +
    `${stackCell('Power classes', powerClassWords(family), 'full')}${stackCell('Median W/cm³', densityWords(family), 'n')}</tr>`
  );
}

function powerClassWords({ powerClasses }: TopologyFamily): string {
  if (powerClasses.length === 0) return '<span class="faded">– rating not known</span>';
  return powerClasses
    .map(
      ({ name, count }) =>
        `<span class="class"><span class="q">${escapeText(name)}</span> <span class="soft">${counted(count, 'sheet')}</span></span>`,
    )
    .join(' ');
}

function densityWords({ densityWPerCm3, members }: TopologyFamily): string {
  if (densityWPerCm3 !== null) return densityWPerCm3.median.toFixed(3);
  return `<span class="faded">– ${members.length < 2 ? 'one sheet' : 'sizes missing'}</span>`;
}

function powerTable(classes: readonly PowerClassFamilies[]): string {
  const rows = classes.map(({ name, families }) => {
    const items = families.map(
      ({ family, sheets }) =>
        `<li><a href="/topologies/${family.id}/">${escapeText(family.name)}</a> <span class="soft">${counted(sheets, 'sheet')}</span></li>`,
    );
    return `<tr><th scope="row" class="ref">${escapeText(name)}</th><td class="full"><ul class="plain-list">${items.join('')}</ul></td></tr>`;
  });
  return stackTable(['Rated output', 'Families, most sheets first'], `<tbody>${rows.join('')}</tbody>`);
}
