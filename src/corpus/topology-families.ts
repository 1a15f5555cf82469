import { stageOf } from '../stages/index.ts';
import type { StageDeclaration } from '../stages/stage-kind.ts';
import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';
import { newestFirst } from './newest-first.ts';
import { powerClasses } from './power-class.ts';
import { spreadOf, type Spread } from './spread.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** One block of a family's chain. */
export interface FamilyBlock {
  /** Stage kind, which is also the name of its glyph. */
  readonly kind: string;
  readonly name: string;
  readonly side: StageDeclaration['side'];
  /** What the block is and why it is there; null for a kind that is not declared. */
  readonly meaning: string | null;
  /** Members that name this block. */
  readonly sheets: number;
}

/** One sheet beside the others of its family. */
export interface FamilyMember {
  readonly sheet: CorpusSheet;
  /** Numbers of its converter controllers in the order power flows. */
  readonly controllers: readonly string[];
  /** Bulk capacitance for each rated watt. */
  readonly bulkMicrofaradsPerWatt: number | null;
}

/** All sheets that share one chain of power stages. */
export interface TopologyFamily {
  readonly id: string;
  readonly name: string;
  readonly chain: readonly FamilyBlock[];
  /** Newest first. */
  readonly members: readonly FamilyMember[];
  readonly powerClasses: readonly { readonly name: string; readonly count: number }[];
  readonly ratedWatts: Spread | null;
  readonly densityWPerCm3: Spread | null;
  readonly bulkMicrofaradsPerWatt: Spread | null;
  readonly partsIdentified: Spread | null;
  /** Connectors that occur, the most frequent first, then as the newest sheet lists them, with the number of sheets that have one. */
  readonly connectors: readonly { readonly connector: string; readonly sheets: number }[];
}

/** The families of the corpus, largest first, then by name. Every sheet is in exactly one. */
export function topologyFamilies(sheets: readonly CorpusSheet[]): readonly TopologyFamily[] {
  const groups = new Map<string, CorpusSheet[]>();
  for (const sheet of [...sheets].sort(newestFirst)) {
    const group = groups.get(sheet.family);
    if (group === undefined) groups.set(sheet.family, [sheet]);
    else group.push(sheet);
  }
  return [...groups]
    .map(([id, members]) => familyOf(id, members))
    .sort((one, other) => other.members.length - one.members.length || compareText(one.name, other.name));
}

function familyOf(id: string, sheets: readonly CorpusSheet[]): TopologyFamily {
  const chain = longestChain(sheets);
  const members = sheets.map(memberOf);
  return {
    id,
    name: nameOf(id, chain),
    chain,
    members,
    powerClasses: powerClasses(sheets.map((sheet) => sheet.ratedWatts)),
    ratedWatts: spreadOf(sheets.map((sheet) => sheet.ratedWatts)),
    densityWPerCm3: spreadOf(sheets.map((sheet) => sheet.densityWPerCm3)),
    bulkMicrofaradsPerWatt: spreadOf(members.map((member) => member.bulkMicrofaradsPerWatt)),
    partsIdentified: spreadOf(sheets.map((sheet) => sheet.partsIdentified)),
    connectors: connectorsOf(sheets),
  };
}

/** Members of a family may differ in small blocks such as the input filter: the one that names most kinds stands for all. */
function longestChain(sheets: readonly CorpusSheet[]): readonly FamilyBlock[] {
  let longest: readonly string[] = [];
  for (const sheet of sheets) {
    const kinds = [...new Set(sheet.glyphs)];
    if (kinds.length > longest.length) longest = kinds;
  }
  return longest.map((kind) => {
    const stage = stageOf(kind);
    const naming = sheets.filter((sheet) => sheet.glyphs.includes(kind)).length;
    return {
      kind,
      name: stage?.name ?? kind.replaceAll('-', ' '),
      side: stage?.side ?? 'none',
      meaning: stage?.meaning ?? null,
      sheets: naming,
    };
  });
}

/** Blocks that make the family, joined: "Boost PFC, LLC half bridge". */
function nameOf(id: string, chain: readonly FamilyBlock[]): string {
  const making = blocksOfId(id, chain);
  const words = making.map((block) => stageOf(block.kind)?.short ?? block.name);
  const name = words.length === 0 ? id.replaceAll('-', ' ') : words.join(', ');
  return sentenceCase(name);
}

/** The blocks of the chain whose kinds, joined by hyphens in the order power flows, are the family's id; none where they do not add up to it. */
export function blocksOfId(id: string, chain: readonly FamilyBlock[]): readonly FamilyBlock[] {
  const making: FamilyBlock[] = [];
  let rest = `${id}-`;
  for (const block of chain) {
    if (!rest.startsWith(`${block.kind}-`)) continue;
    making.push(block);
    rest = rest.slice(block.kind.length + 1);
  }
  return rest === '' ? making : [];
}

function memberOf(sheet: CorpusSheet): FamilyMember {
  const { bulkMicrofarads, ratedWatts } = sheet;
  return {
    sheet,
    controllers: [...new Set(sheet.parts.filter((part) => isConverterController(part.role)).map((part) => part.number))],
    bulkMicrofaradsPerWatt: bulkMicrofarads === null || ratedWatts === null || ratedWatts <= 0 ? null : bulkMicrofarads / ratedWatts,
  };
}

/** Controllers of converters; the one that speaks the port's protocol says nothing about the platform's power path. */
function isConverterController(role: string): boolean {
  return role.endsWith('controller') && role !== 'protocol-controller' && role !== 'microcontroller';
}

function connectorsOf(sheets: readonly CorpusSheet[]): readonly { readonly connector: string; readonly sheets: number }[] {
  const counts = new Map<string, number>();
  for (const sheet of sheets) {
    for (const connector of new Set(sheet.ports.map((port) => port.connector))) counts.set(connector, (counts.get(connector) ?? 0) + 1);
  }
  return [...counts].map(([connector, count]) => ({ connector, sheets: count })).sort((one, other) => other.sheets - one.sheets);
}
