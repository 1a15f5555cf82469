import type { SheetTerms } from './search-words-of-sheet.ts';
import type { SheetFacts } from './sheet-facts.ts';

/** What lists across all sheets need of one, beyond its summary: `across.json` of the prepared folder, by slug. */
export interface AcrossFacts {
  readonly facts: SheetFacts;
  readonly terms: SheetTerms;
}
