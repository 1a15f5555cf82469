import { sentenceCase } from '../units/sentence-case.ts';
import { familySupply } from '../corpus/family-sentence.ts';
import type { FamilyBlock, TopologyFamily } from '../corpus/topology-families.ts';
import { isConnector } from '../figures/drawn-connectors.ts';
import { escapeText } from '../figures/markup.ts';
import { connectorFace } from '../figures/port-face.ts';
import { stageGlyph } from '../figures/stage-glyph.ts';

const SUPPLIES = {
  mains: { name: 'Mains', shape: '<circle cx="17" cy="17" r="16.25"/><path d="M7 17q5-11 10 0t10 0"/>' },
  'DC supply': { name: 'DC supply', shape: '<circle cx="17" cy="17" r="16.25"/><path d="M9 14.5h16"/><path class="dd" d="M9 19.5h16"/>' },
} as const;

const BARRIER =
  '<svg class="fbarrier" aria-hidden="true"><line class="insulation down" x1="1" y1="0" x2="1" y2="100%"/>' +
  '<line class="insulation across" x1="0" y1="1" x2="100%" y2="1"/></svg>';

/** The blocks of a family in the order power flows, with the barrier and the ports; side by side on a sheet, downwards on a phone. */
export function familyChain(family: TopologyFamily): string {
  const barrier = family.chain.findLast((block) => block.side === 'barrier');
  const blocks = family.chain.filter((block) => block.kind !== 'port-control');
  const items = blocks.map((block) => blockItem(block, family.members.length, barrier));
  return `<ol class="fchain">${supplyItem(family)}${items.join('')}${portsItem(family)}</ol>`;
}

function supplyItem(family: TopologyFamily): string {
  const supply = familySupply(family);
  if (supply === 'cells' || supply === null) return '';
  const { name, shape } = SUPPLIES[supply];
  return `<li><svg class="g fg" viewBox="0 0 34 34" aria-hidden="true">${shape}</svg> <span class="fname"><b>${name}</b></span></li>`;
}

function blockItem(block: FamilyBlock, total: number, barrier: FamilyBlock | undefined): string {
  const crosses = block === barrier;
  const side = barrier === undefined ? '' : ` <span class="fside">${sideWords(block)}</span>`;
  const count = block.sheets < total ? ` <span class="fside q">${String(block.sheets)} of ${String(total)} sheets</span>` : '';
  const name = `<span class="fname"><b>${escapeText(sentenceCase(block.name))}</b>${side}${count}</span>`;
  return `<li${crosses ? ' class="crosses"' : ''}><span class="fglyph">${stageGlyph(block.kind)}</span> ${name}${crosses ? ` ${BARRIER}` : ''}</li>`;
}

function sideWords({ side }: FamilyBlock): string {
  return side === 'barrier' ? 'across the barrier' : side === 'none' ? 'on either side' : side;
}

function portsItem({ connectors, members }: TopologyFamily): string {
  const items = connectors.map(({ connector, sheets }) => {
    const face = isConnector(connector) ? connectorFace(connector, 20, 10, 3) : '';
    const svg = `<svg class="fig" aria-hidden="true" width="40" height="20" viewBox="0 0 40 20">${face}</svg>`;
    const count = `<span class="fside q">${String(sheets)} of ${String(members.length)}</span>`;
    return `<li>${svg} <span class="fname"><b>${escapeText(connector)}</b> ${count}</span></li>`;
  });
  return `<li class="fports"><ul>${items.join('')}</ul></li>`;
}
