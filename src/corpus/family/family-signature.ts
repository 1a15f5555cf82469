import { compareText } from '../compare-text.ts';
import type { CorpusSheet } from '../corpus-sheet.ts';
import type { TopologyFamily } from '../topology-families.ts';

/** Something that members of a family have, with the number of sheets. */
interface Shared {
  readonly words: string;
  readonly sheets: number;
}

/** What makes the family and how its members vary: isolation, rectification, ways to the ports, controllers met most. */
export interface FamilySignature {
  readonly isolated: boolean;
  readonly rectification: readonly Shared[];
  readonly fanOut: readonly Shared[];
  /** Converter controllers on two sheets or more, the most frequent first. */
  readonly controllers: readonly Shared[];
}

/** Ways and controllers that are listed. */
const LISTED = 8;

/** The signature of a family, read off its members. */
export function familySignature(family: TopologyFamily): FamilySignature {
  const sheets = family.members.map((member) => member.sheet);
  return {
    isolated: sheets.some((sheet) => sheet.traits.isolated),
    rectification: counted(sheets, ({ traits }) => (traits.rectification === 'not known' ? [] : [rectifierWords(traits.rectification)])),
    fanOut: counted(sheets, ({ traits }) => (traits.fanOut.length === 0 ? [] : [fanOutWords(traits.fanOut)])).slice(0, LISTED),
    controllers: countedIn(family.members.map((member) => member.controllers))
      .filter((shared) => shared.sheets > 1)
      .slice(0, LISTED),
  };
}

function rectifierWords(rectification: 'synchronous' | 'diode'): string {
  return rectification === 'diode' ? 'diodes' : 'synchronous rectifiers';
}

/** "2 × buck: USB-C, buck: USB-C + USB-A". */
function fanOutWords(stages: readonly string[]): string {
  return countedIn(stages.map((stage) => [stage]))
    .map(({ words, sheets }) => (sheets === 1 ? words : `${String(sheets)} × ${words}`))
    .join(', ');
}

function counted(sheets: readonly CorpusSheet[], of: (sheet: CorpusSheet) => readonly string[]): readonly Shared[] {
  return countedIn(sheets.map(of));
}

function countedIn(lists: readonly (readonly string[])[]): readonly Shared[] {
  const counts = new Map<string, number>();
  for (const list of lists) for (const words of new Set(list)) counts.set(words, (counts.get(words) ?? 0) + 1);
  return [...counts]
    .map(([words, sheets]) => ({ words, sheets }))
    .sort((one, other) => other.sheets - one.sheets || compareText(one.words, other.words));
}
