import { createHash } from 'node:crypto';
import { formulaUses, type FormulaUse } from '../corpus/formula-uses.ts';
import type { PreparedSheet, SheetSummary } from '../corpus/prepared.ts';
import { sheetTerms } from '../corpus/search-words-of-sheet.ts';
import { factsOf } from '../corpus/sheet-facts.ts';
import { drawSheet } from '../render/draw-sheet.ts';
import type { AcrossFacts } from '../corpus/across-facts.ts';
import { sheetBytes } from './sheet-file.ts';
import { summaryOf } from './summary-of.ts';

/** What is made of a sheet for the pages and for nothing else. */
export interface PageWork {
  readonly summary: SheetSummary;
  readonly uses: readonly FormulaUse[];
  readonly across: AcrossFacts;
  /** The drawn sheet as it is written to disk. */
  readonly bytes: Uint8Array;
}

/** Draws a sheet and gathers what lists across sheets need of it: two fifths of an entry's time, so `check` leaves it out. */
export function pageWork(sheet: PreparedSheet): PageWork {
  const { entry, derived, html } = sheet;
  const bytes = sheetBytes(drawSheet(sheet));
  const listed = summaryOf({ entry, derived });
  const facts = factsOf(entry, derived);
  const digest = createHash('sha256')
    .update(bytes)
    .update(JSON.stringify([listed, facts]))
    .digest('hex')
    .slice(0, 32);
  return {
    summary: { ...listed, digest },
    uses: formulaUses(derived),
    across: { facts, terms: sheetTerms(entry, derived, html) },
    bytes,
  };
}
