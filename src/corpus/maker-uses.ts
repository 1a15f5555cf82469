import { makerAddress } from './address.ts';
import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';
import { newestFirst } from './newest-first.ts';
import { perhapsSame } from './perhaps-same.ts';

/** One part number of a maker. */
export interface MakerPart {
  readonly number: string;
  /** Role ids in the order found. */
  readonly roles: readonly string[];
  /** Sheets on which this maker is named with it, newest first. */
  readonly sheets: readonly CorpusSheet[];
}

/** A name that stands as maker on devices, on parts, or on both. */
export interface MakerPage {
  readonly name: string;
  /** Last piece of its address: `/makers/<address>/`. */
  readonly address: string;
  /** Devices sold under the name, newest first. */
  readonly devices: readonly CorpusSheet[];
  /** Parts that carry the name, in the order of their numbers. */
  readonly parts: readonly MakerPart[];
  /** Sheets on which any of its parts was found. */
  readonly partSheetCount: number;
  /** Sheets that name it as maker of parts, none of which has a number; newest first. */
  readonly unnumbered: readonly CorpusSheet[];
  /** Names that differ only in writing habits. */
  readonly perhapsSame: readonly { readonly name: string; readonly address: string }[];
}

interface Gathering {
  readonly named: CorpusSheet[];
  readonly devices: CorpusSheet[];
  readonly parts: Map<string, { readonly roles: Set<string>; readonly sheets: Set<CorpusSheet> }>;
}

/** Every maker of the corpus, in the order of the names. */
export function makerUses(sheets: readonly CorpusSheet[]): readonly MakerPage[] {
  const makers = new Map<string, Gathering>();
  const gatheringOf = (name: string): Gathering => {
    const known = makers.get(name) ?? { named: [], devices: [], parts: new Map() };
    makers.set(name, known);
    return known;
  };
  for (const sheet of [...sheets].sort(newestFirst)) {
    gatheringOf(sheet.maker).devices.push(sheet);
    for (const maker of sheet.partMakers) gatheringOf(maker).named.push(sheet);
    for (const part of sheet.parts) {
      if (part.maker === null) continue;
      const { parts } = gatheringOf(part.maker);
      const known = parts.get(part.number) ?? { roles: new Set<string>(), sheets: new Set<CorpusSheet>() };
      known.roles.add(part.role);
      known.sheets.add(sheet);
      parts.set(part.number, known);
    }
  }
  const names = [...makers.keys()].sort(compareText);
  const alike = perhapsSame(names, 'name');
  return names.map((name) => pageOf(name, gatheringOf(name), alike.get(name) ?? []));
}

function pageOf(name: string, { named, devices, parts }: Gathering, alike: readonly string[]): MakerPage {
  const partSheets = new Set([...parts.values()].flatMap((part) => [...part.sheets]));
  return {
    name,
    address: makerAddress(name),
    devices,
    parts: [...parts]
      .map(([number, part]) => ({ number, roles: [...part.roles], sheets: [...part.sheets] }))
      .sort((one, other) => compareText(one.number, other.number)),
    partSheetCount: new Set([...partSheets, ...named]).size,
    unnumbered: named.filter((sheet) => !partSheets.has(sheet)),
    perhapsSame: alike.map((other) => ({ name: other, address: makerAddress(other) })),
  };
}
