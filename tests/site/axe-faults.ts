/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** Accessibility faults of a page, three places of each kind. The window must be open to scripts of others (`bypassCSP`). */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  return await page.evaluate(async () => {
    // axe put itself there one line above.
    const { axe } = globalThis as unknown as { axe: { run: () => Promise<{ violations: readonly Violation[] }> } };
    const { violations } = await axe.run();
    return violations.map(({ id, nodes }) => {
      const places = nodes.slice(0, 3).map((node) => `${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`);
      return `${id}: ${places.join(' | ')}`;
    });
  });
}
