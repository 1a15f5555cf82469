import { FORMULAS } from '../formulas/index.ts';
import { allRules } from './all-rules.ts';
import type { SitePages } from './site-pages.ts';

/** Pages that every site has, whatever its content: one for each formula and each rule. */
export const KNOWN_PAGES: Pick<SitePages, 'methods' | 'rules'> = {
  methods: new Set(FORMULAS.map((formula) => formula.id)),
  rules: new Set(allRules().map((rule) => rule.id)),
};
