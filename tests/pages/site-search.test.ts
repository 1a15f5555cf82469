import { expect, test } from 'vitest';
import { FORMULAS } from '../../src/formulas/index.ts';
import { SUBJECT_TITLES } from '../../src/formulas/subject-titles.ts';
import { siteSearch } from '../../src/pages/site-search.ts';
import { inventedCorpus } from './invented-corpus.ts';

test('a method is found under the heading that its subject has on the page of the methods', () => {
  const found = JSON.stringify(siteSearch(inventedCorpus([])));
  expect(found).toContain('LLC half bridge');
  for (const { subject } of FORMULAS) expect(SUBJECT_TITLES[subject], subject).toBeDefined();
});
