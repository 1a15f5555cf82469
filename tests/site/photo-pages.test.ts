/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';
import { buildSmallSite, pageSource } from './built-site.ts';
import { showSite } from './shown-site.ts';

const SHEET = '/base/teardowns/fennimoor-deskway-100/';
const WITHOUT = '/base/teardowns/plain/';
const PLAIN = [
  '---',
  'title: A charger without photos',
  'status: published',
  'published: 2026-03-01',
  'summary: Nothing to see.',
  'device: { maker: Ostrel, model: OV-60, kind: wall charger }',
  '---',
  '',
  'Only words.',
  '',
].join('\n');

const shown = await showSite(() => buildSmallSite('/base/', ['fennimoor-deskway-100'], { files: { 'teardowns/plain/index.md': PLAIN } }));

/** Whether the row and the circle of one item are lit. */
async function lit(page: Page, item: string): Promise<readonly boolean[]> {
  return await page
    .locator(`tr[data-item="${item}"], .ph-around .ph-item[data-item="${item}"]`)
    .evaluateAll((marked) => marked.map((each) => each.classList.contains('lit')));
}

describe('a sheet with photos', () => {
  it('ships the script of the callouts, and a sheet without photos ships none but that of the scheme', () => {
    const scripts = (address: string): number => pageSource(shown.site, address).match(/<script[^>]* src=/g)?.length ?? 0;
    expect(scripts(WITHOUT)).toBe(1);
    expect(scripts(SHEET)).toBe(2);
    expect(pageSource(shown.site, SHEET)).not.toContain('photo-picker');
  });
});

shown.describeInBrowser('a sheet with photos in a real browser', () => {
  it('lights circle and row together on hover and on focus', async () => {
    const page = await shown.opened(SHEET, { viewport: { width: 1280, height: 900 } });
    const circle = page.locator('#photo-2 .ph-around .ph-item').first();
    const item = (await circle.getAttribute('data-item')) ?? '';
    expect(await lit(page, item)).not.toContain(true);
    await circle.hover();
    expect(await lit(page, item)).not.toContain(false);
    await page.mouse.move(2, 2);
    const row = page.locator('tr[data-item] a.item').last();
    const other = (await row.textContent()) ?? '';
    await row.focus();
    expect(await lit(page, other)).not.toContain(false);
    expect(await lit(page, item)).not.toContain(true);
  });

  it('without script a circle leads to its row and the row back to the spot in the photo', async () => {
    const page = await shown.opened(SHEET, { viewport: { width: 1280, height: 900 }, javaScriptEnabled: false });
    const circle = page.locator('#photo-2 .ph-around .ph-item').first();
    const item = (await circle.getAttribute('data-item')) ?? '';
    await circle.click();
    expect(await page.locator('tr:target').getAttribute('data-item')).toBe(item);
    await page.locator('tr:target a.item').click();
    expect(await page.locator('.ph-spot:target').getAttribute('data-item')).toBe(item);
  });

  it('shows the zone that a pointer names', async () => {
    const page = await shown.opened(`${SHEET}#photo-2-B4`, { viewport: { width: 1280, height: 900 } });
    const zone = page.locator('#photo-2-B4');
    expect(await zone.evaluate((rect) => getComputedStyle(rect).stroke)).not.toBe('none');
    const top = await zone.evaluate((rect) => rect.getBoundingClientRect().top);
    expect(top).toBeGreaterThan(-1);
    expect(top).toBeLessThan(900);
  });

  it('has the circles on the parts and no sideways scroll on a phone', async () => {
    const page = await shown.opened(SHEET, { viewport: { width: 360, height: 800 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(await page.locator('#photo-2 .ph-around').isVisible()).toBe(false);
    expect(await page.locator('#photo-2 .ph-near').isVisible()).toBe(true);
  });

  it('while writing, a click in a photo gives the place in per cent, the zone, and two ends', async () => {
    const page = await shown.opened(SHEET, { viewport: { width: 1280, height: 900 }, bypassCSP: true });
    await page.addScriptTag({ content: await pickerScript() });
    const picture = page.locator('#photo-2 .ph-picture');
    const box = await picture.boundingBox();
    if (box === null) throw new Error('no picture');
    await picture.click({ position: { x: box.width * 0.05, y: box.height * 0.05 } });
    await picture.click({ position: { x: box.width * 0.95, y: box.height * 0.95 } });
    const words = (await page.locator('#photo-2 [data-picked]').textContent()) ?? '';
    expect(words).toMatch(/^9[45]\.\d % 9[45]\.\d %\n:photo\[2 D6\]\n\{ from: [45]\.\d % [45]\.\d %, to: 9[45]\.\d % 9[45]\.\d % \}$/);
  });
});

/** The picker as one script, as the generator would serve it while writing. */
async function pickerScript(): Promise<string> {
  const entry = 'virtual:picker';
  const file = join(PROJECT_ROOT, 'src/site/scripts/photo-picker.ts');
  const result = await build({
    ...{ configFile: false, logLevel: 'silent', root: PROJECT_ROOT },
    plugins: [
      {
        name: 'picker',
        resolveId: (id) => (id === entry ? `\0${entry}` : null),
        load: (id) =>
          id === `\0${entry}` ? `import { startPhotoPicker } from ${JSON.stringify(file)}; startPhotoPicker(document);` : null,
      },
    ],
    build: { write: false, rolldownOptions: { input: entry, output: { format: 'iife' } } },
  });
  const [output] = Array.isArray(result) ? result : [result];
  if (!('output' in output)) throw new Error('no script');
  return output.output[0].code;
}
