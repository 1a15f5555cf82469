import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { familySentence } from '../corpus/family-sentence.ts';
import type { ListPage } from '../corpus/pages-of.ts';
import type { FamilyMember, TopologyFamily } from '../corpus/topology-families.ts';
import { escapeText, px } from '../figures/markup.ts';
import { stageGlyph } from '../figures/stage-glyph.ts';
import { familyChain } from './family-chain.ts';
import { familyNumbersZone } from './family-numbers-zone.ts';
import { familyStressZone } from './family-stress-zone.ts';
import { memberTable } from './member-table.ts';
import { pageTurner } from './page-turner.ts';
import { ZONE_END, fullZone, sideZone, zoneList, zoneStart } from './zone.ts';

const OPEN = { letter: 'A', title: null, label: 'The family' } as const;
const BLOCKS = { letter: 'B', title: 'Block by block', label: 'Block by block' } as const;
const STRESS = { letter: 'C', title: 'Stress in the family', label: 'Stress in the family' } as const;
const NUMBERS = { letter: 'D', title: 'In numbers', label: 'In numbers' } as const;
const SHEETS = { letter: 'E', title: 'Sheets in this family', label: 'Sheets in this family' } as const;

/** A family's place among all, from 1. */
export interface FamilyPlace {
  readonly place: number;
  readonly families: number;
}

/** Zones of one page of a topology family. */
export function familyZones(family: TopologyFamily, place: FamilyPlace, list: ListPage<FamilyMember>): string {
  return (
    `${zoneStart(OPEN)}${titleLine(family, place)}${leadWords(family)}${family.chain.length === 0 ? '' : familyChain(family)}` +
    `${zoneList([OPEN, BLOCKS, STRESS, NUMBERS, SHEETS])}${ZONE_END}` +
    sideZone(BLOCKS, blockWords(family), blockList(family)) +
    familyStressZone(STRESS, family) +
    familyNumbersZone(NUMBERS, family) +
    fullZone(SHEETS, memberWords(family), memberTable(family, list.rows) + pageTurner(list, `/topologies/${family.id}/`) + MEMBER_NOTE)
  );
}

const MEMBER_NOTE =
  '<p class="note under">Density is of the closed case unless a sheet says otherwise. Ratings count the parts whose worst-case stress is over, ' +
  'or straddles, the derating limit; an indication, not a compliance verdict.</p>';

function titleLine({ name, members }: TopologyFamily, { place, families }: FamilyPlace): string {
  const among = `Topology family <span class="q">${place}</span> of <span class="q">${families}</span>`;
  const sheets = `<span class="q">${members.length}</span> ${members.length === 1 ? 'sheet' : 'sheets'}`;
  return `<div class="title-line"><h1>${escapeText(name)}</h1><p class="soft">${among} · ${sheets}</p></div>`;
}

function leadWords(family: TopologyFamily): string {
  const { ratedWatts, densityWPerCm3 } = family;
  const sentence = familySentence(family);
  const words = sentence === '' ? '' : `<p class="lead under">${escapeText(sentence)}</p>`;
  if (ratedWatts === null) return words;
  const [low, high] = [px(ratedWatts.low), px(ratedWatts.high)];
  const rated = `Rated <span class="q">${ratedWatts.low === ratedWatts.high ? low : `${low} to ${high}`} W</span> on these sheets`;
  const density = densityWPerCm3 === null ? '' : `; median density <span class="q">${densityWPerCm3.median.toFixed(3)} W/cm³</span>`;
  return `${words}<p class="lead">${rated}${density}.</p>`;
}

function blockWords({ chain }: TopologyFamily): string {
  const barrier = chain.some((block) => block.side === 'barrier')
    ? 'The line of long and short dashes is the insulation barrier: what stands before it is at mains potential. '
    : '';
  return (
    '<p>What each block is, and why designers put it there.</p>' +
    `<p class="note ruled">${barrier}<a class="all-of" href="/topologies/">All families</a></p>`
  );
}

function blockList({ chain }: TopologyFamily): string {
  const items = chain.flatMap(({ kind, name, meaning }) =>
    meaning === null
      ? []
      : [`<li>${stageGlyph(kind)}<div><h3>${escapeText(sentenceCase(name))}</h3><p>${escapeText(meaning)}</p></div></li>`],
  );
  return items.length === 0 ? '<p>No block of this chain is described yet.</p>' : `<ul class="blocks">${items.join('')}</ul>`;
}

function memberWords({ members }: TopologyFamily): string {
  return members.length === 1
    ? 'One sheet so far, so there is nothing to put beside it yet.'
    : `${counted(members.length, 'sheet')}, newest first, outlines at one scale. Controllers stand in the order of the part list; a rare one in two sheets is the strongest hint at one platform.`;
}
