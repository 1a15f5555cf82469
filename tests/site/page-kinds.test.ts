/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';
import { axeFaults } from './axe-faults.ts';
import { buildSmallSite, onePageOfEachKind } from './built-site.ts';
import { showSite, type WindowOptions } from './shown-site.ts';
import { smallText } from './small-text.ts';

const TEARDOWNS = ['fennimoor-deskway-100', 'marlhythe-causeway-100', 'wendlestone-fairlead-92'];
const BENCH = { 'bench.yaml': readFileSync(join(PROJECT_ROOT, 'demo/bench.yaml')) };

const full = await showSite(() => buildSmallSite('/', TEARDOWNS, { files: BENCH }));
const empty = await showSite(() => buildSmallSite('/', []));

/** Pages as they stand after a reader has asked something of them, and what is there once they have answered. */
const ASKED: Readonly<Record<string, string>> = {
  '/search/?q=llc': '.results',
  '/search/?q=zzzz': '[data-said]:text("No page has")',
  '/search/?q=x': '[data-said]:text("too short")',
  [`/compare/?sheets=${TEARDOWNS.join(',')}`]: '.compared',
  '/finder/?watts=90..100': '.found tbody tr',
  '/finder/?watts=1..2': '.found-line',
};
/** Window of a phone at 320 px: that of 1280 enlarged fourfold. */
const WIDTHS = [320, 360, 640, 768, 1024, 1280, 1920];

/** Visits every page of both sites, those that were asked something after they have answered. */
async function visitAll(window: WindowOptions, look: (page: Page, address: string) => Promise<void>): Promise<void> {
  await full.visit([...onePageOfEachKind(full.site), ...Object.keys(ASKED)], window, async (page, address) => {
    const answer = ASKED[address];
    if (answer !== undefined) await page.locator(answer).first().waitFor();
    await look(page, address);
  });
  await empty.visit(onePageOfEachKind(empty.site), window, look);
}

full.describeInBrowser('every kind of page, and what it answers', () => {
  it('is there: home, sheets, lists, one of each list, planner, bench, data', () => {
    const firstSteps = (pages: readonly string[]): readonly string[] => [...new Set(pages.map((page) => page.split('/')[1] ?? ''))].sort();
    expect(firstSteps(onePageOfEachKind(full.site))).toEqual(firstSteps(full.site.pages));
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`has no accessibility fault after it has answered, nor has a site without content (${colorScheme})`, async () => {
      const faults: string[] = [];
      const window = { viewport: { width: 1280, height: 900 }, colorScheme, bypassCSP: true };
      // The others are looked at with the built pages.
      await visitAll(window, async (page, address) => {
        if (address in ASKED || page.url().startsWith(empty.origin))
          faults.push(...(await axeFaults(page)).map((fault) => `${address} ${fault}`));
      });
      expect(faults).toEqual([]);
    });
  }

  it('is no wider than its window, and has no text under 12.5 px, from 320 px to 1920', async () => {
    const faults: string[] = [];
    await visitAll({ viewport: { width: 1280, height: 900 } }, async (page, address) => {
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        if (wide > width) faults.push(`${address} is ${wide} px wide at ${width}`);
        faults.push(...(await page.evaluate(smallText)).map((text) => `${address} at ${width}: ${text}`));
      }
    });
    expect(faults).toEqual([]);
  });

  it('shows where the focus is on everything that the keyboard reaches, the skip link first, and lets it go on', async () => {
    const faults: string[] = [];
    // An empty search puts the focus into its field by itself.
    const pages = [...onePageOfEachKind(full.site).filter((page) => page !== '/search/'), '/search/?q=llc'];
    await full.visit(pages, { viewport: { width: 1280, height: 900 } }, async (page, address) => {
      const seen = new Set<number>();
      for (let step = 0; step < 40; step += 1) {
        await page.keyboard.press('Tab');
        const at = await page.evaluate(focusedPlace);
        // Round once, or out into the window of the browser.
        if (at === null || seen.has(at.place)) break;
        seen.add(at.place);
        if (step === 0 && !at.name.includes('class="skip"')) faults.push(`${address}: first ${at.name}`);
        // What has the focus of an arrow is drawn on its dimension line.
        if (!at.isShown && !at.name.includes('data-handle')) faults.push(`${address}: no focus to see on ${at.name}`);
      }
      if (seen.size < 3) faults.push(`${address}: the keyboard reaches ${seen.size} things`);
    });
    expect(faults).toEqual([]);
  });

  it('says on an empty bench that there is nothing to plan with, compare or find', async () => {
    const said: string[] = [];
    await empty.visit(['/planner/', '/compare/', '/finder/'], { viewport: { width: 1280, height: 900 } }, async (page) => {
      await page.waitForLoadState('networkidle');
      expect(await page.locator('form:visible, [data-form]:visible').count()).toBe(0);
      said.push((await page.locator('main').innerText()).replaceAll(/\s+/g, ' '));
    });
    expect(said.map((words) => /No teardown is published yet[^.]*\./.exec(words)?.[0])).toEqual([
      'No teardown is published yet, so there is no charger to plan with.',
      'No teardown is published yet.',
      'No teardown is published yet.',
    ]);
  });

  it('moves nothing by itself', async () => {
    await full.visit(onePageOfEachKind(full.site), { viewport: { width: 1280, height: 900 } }, async (page, address) => {
      expect(await page.evaluate(movingThings), address).toEqual([]);
    });
  });

  it('paints its text while no script and no font has come', async () => {
    const context = await full.openWindow({ viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    const held: string[] = [];
    // Asked for, and never answered.
    await page.route(/\.(?:js|woff2)(?:\?|$)/, (route) => void held.push(route.request().url()));
    for (const address of ['/', `/teardowns/${TEARDOWNS[0] ?? ''}/`, '/finder/']) {
      held.length = 0;
      await page.goto(full.origin + address, { waitUntil: 'commit' });
      await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0, undefined, { timeout: 20_000 });
      expect(await page.locator('h1').isVisible(), address).toBe(true);
      for (const kind of ['.js', '.woff2'])
        expect(held.filter((url) => url.includes(kind)).length, `${address} ${kind}`).toBeGreaterThan(0);
      // Faces of this machine with our metrics stand in until ours come.
      const come = await page.evaluate(() => [...document.fonts].filter(({ status }) => status === 'loaded').map(({ family }) => family));
      expect(
        come.filter((family) => !family.includes('Metric')),
        address,
      ).toEqual([]);
    }
    await context.close();
  });
});

/** Runs inside a page: what has the focus, its place among all elements, and whether it is outlined; null where nothing has it. */
function focusedPlace(): { readonly place: number; readonly name: string; readonly isShown: boolean } | null {
  const element = document.activeElement;
  if (element === null || element === document.body) return null;
  const { outlineStyle, outlineWidth } = getComputedStyle(element);
  const place = [...document.querySelectorAll('*')].indexOf(element);
  return { place, name: element.outerHTML.slice(0, 80), isShown: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2 };
}

/** Runs inside a page: elements that move or scroll by themselves, or change slowly. */
function movingThings(): readonly string[] {
  return [...document.querySelectorAll('*')]
    .filter((element) => {
      const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
      const isSlow = transitionDuration.split(', ').some((each) => Number.parseFloat(each) > 0);
      return animationName !== 'none' || isSlow || scrollBehavior === 'smooth';
    })
    .map((element) => element.outerHTML.slice(0, 60));
}
