import type { ComparisonRow } from '../corpus/comparison-row.ts';
import type { SheetFacts } from '../corpus/sheet-facts.ts';
import type { SheetSummary } from '../corpus/prepared.ts';
import type { Connector } from '../entry/entry.ts';
import { pathGlyphs } from './path-glyphs.ts';

/** One device as the comparison needs it; also the file that a choice of the reader fetches. */
export interface ComparedSheet {
  readonly slug: string;
  readonly name: string;
  readonly fullName: string;
  readonly number: string | null;
  readonly revision: string;
  readonly kind: string;
  readonly outline: readonly [number, number, number] | null;
  readonly ports: readonly { readonly id: string; readonly connector: Connector }[];
  /** Blocks of the power path that have a drawing, each once. */
  readonly glyphs: readonly string[];
  readonly rows: readonly ComparisonRow[];
  readonly strongestPort: SheetFacts['strongestPort'];
}

/** What the comparison shows of one sheet. */
export function comparedSheet(sheet: SheetSummary, facts: SheetFacts): ComparedSheet {
  return {
    slug: sheet.slug,
    name: sheet.name,
    fullName: sheet.name.startsWith(sheet.maker) ? sheet.name : `${sheet.maker} ${sheet.name}`,
    number: sheet.number,
    revision: sheet.revision,
    kind: sheet.kind,
    outline: sheet.outline,
    ports: sheet.ports,
    glyphs: pathGlyphs(sheet.glyphs),
    rows: facts.comparison,
    strongestPort: facts.strongestPort,
  };
}
