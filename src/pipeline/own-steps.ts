import { CHECKS } from '../checks/index.ts';
import { derive } from '../derived/derive.ts';
import { parseFrontmatter } from '../entry/parse-frontmatter.ts';
import { placeFindings } from '../entry/place-findings.ts';
import { readEntry } from '../entry/read-entry.ts';
import { FORMULAS } from '../formulas/index.ts';
import { TABLES } from '../tables/index.ts';
import { formatInterval } from '../units/format.ts';
import type { Value } from '../values/value.ts';
import type { EntrySteps } from './entry-steps.ts';

/** The steps of the program itself. */
export const OWN_STEPS: EntrySteps = {
  split: (_, text) => parseFrontmatter(text),
  read: readEntry,
  derive,
  checks: CHECKS.map(({ id, check }) => ({ id, run: check })),
  tables: TABLES.map(({ build, ...table }) => ({ ...table, run: build })),
  place: placeFindings,
  methods: new Map(FORMULAS.map((formula) => [formula.id, formula.title])),
  showValue,
};

function showValue(value: Value): string {
  const { number, unit } = formatInterval(value, value.dimension);
  return unit === '' ? number : `${number} ${unit}`;
}
