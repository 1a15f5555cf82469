import { describe, expect, test } from 'vitest';
import { faultOfLink, type SitePages } from '../../src/pipeline/site-pages.ts';

const PAGES: SitePages = {
  published: new Set(['larkmoor-65']),
  drafts: new Set(['larkmoor-draft']),
  methods: new Set(['power-drop']),
  rules: new Set(['same-set-twice']),
};

describe('a link to a page of the site', () => {
  test.each(['/teardowns/larkmoor-65/', '/planner/', '/finder/', '/methods/power-drop/', '/rules/'])('%s leads somewhere', (path) => {
    expect(faultOfLink(path, PAGES)).toBeNull();
  });

  test.each([
    ['/teardowns/larkmoor-56/', 'prose-link-broken'],
    ['/teardowns/larkmoor-65/planner/', 'prose-link-broken'],
    ['/teardowns/larkmoor-65/photo.jpg', 'prose-link-broken'],
    ['/teardowns/larkmoor-draft/', 'prose-link-draft'],
    ['/methods/power-drop/planner/', 'prose-link-broken'],
  ])('%s is refused', (path, rule) => {
    expect(faultOfLink(path, PAGES)?.rule).toBe(rule);
  });
});
