/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { buildSmallSite, pageSource } from './built-site.ts';
import { showSite, type WindowOptions } from './shown-site.ts';

const SHEET = '/base/teardowns/ostlewick-lantern-140/';
const PLANNER = '/base/planner/';
const FOUR_PORTS = `${PLANNER}?sheet=ostlewick-lantern-140`;

const shown = await showSite(() => buildSmallSite('/base/', ['ostlewick-lantern-140', 'tillmere-nub-20']));

/** A page; the planner's own once it has answered. */
async function opened(address: string, options?: WindowOptions): Promise<Page> {
  const page = await shown.opened(address, options);
  if (address.startsWith(PLANNER)) await page.locator('[data-answer]:not([hidden])').waitFor();
  return page;
}

/** Rows of the plan: port, device, watts, whether it is met. */
async function plan(page: Page): Promise<string[]> {
  return await page
    .locator('[data-answer] table')
    .first()
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => (cell.firstChild?.textContent ?? '').replace(/\u00a0/g, ' ')).join(' | ')),
    );
}

describe('the planner’s page as built', () => {
  it('is linked from each teardown with two output ports or more', () => {
    expect(shown.site.pages).toContain(PLANNER);
    expect(pageSource(shown.site, SHEET)).toContain(`<a href="${FOUR_PORTS}">open the planner</a>`);
    expect(pageSource(shown.site, '/base/teardowns/tillmere-nub-20/')).not.toContain(PLANNER);
  });

  it('has usual devices planned on the sheet, without script', () => {
    const html = pageSource(shown.site, SHEET);
    expect(html).toContain('needs met');
    expect(html).toContain(`<a href="${FOUR_PORTS}&amp;devices=`);
    expect(pageSource(shown.site, PLANNER)).toMatch(/<div data-form hidden/);
    expect(pageSource(shown.site, PLANNER)).toContain(`<a href="${SHEET}">`);
  });

  it('weighs under 12 KB compressed, script and data together', () => {
    const html = pageSource(shown.site, PLANNER);
    const scripts = readdirSync(join(shown.site.folder, '_sheet')).filter((name) => name.endsWith('.js') && html.includes(name));
    expect(scripts).toHaveLength(1);
    const data = readFileSync(join(shown.site.folder, 'planner/sheets/ostlewick-lantern-140.json'));
    expect(data.length).toBeGreaterThan(500);
    const code = scripts.map((name) => readFileSync(join(shown.site.folder, '_sheet', name), 'utf8')).join('');
    expect(gzipSync(code).length + gzipSync(data).length).toBeLessThan(12_000);
  });

  it('puts no script on the teardown’s own page, which has that of the scheme and of its callouts', () => {
    const html = pageSource(shown.site, SHEET);
    const scripts = [...html.matchAll(/<script[^>]*src="([^"]+)"/g)].map((match) => match[1] ?? '');
    expect(scripts[0]).toBe('/base/scheme.js');
    expect(scripts.length).toBeLessThanOrEqual(2);
    for (const name of scripts.slice(1)) {
      const code = readFileSync(join(shown.site.folder, name.slice('/base/'.length)), 'utf8');
      expect(code).not.toContain('data-watts');
    }
  });
});

shown.describeInBrowser('the planner in a real browser', () => {
  it('plans the devices of the address and keeps the address up to date', async () => {
    const page = await opened(`${FOUR_PORTS}&devices=65W20V_30W15V`);
    expect(await page.locator('.devices li').count()).toBe(2);
    expect(await plan(page)).toEqual(['C1 | Laptop, 65 W | 65 W | 65 W, met', 'C2 | Tablet, 30 W | 30 W | 30 W, met']);
    await page.locator('[data-kind]').nth(1).selectOption('laptop-100');
    expect(new URL(page.url()).searchParams.get('devices')).toBe('65W20V_100W20V');
    expect(await page.locator('[data-status]').textContent()).toMatch(/of 2 needs met/);
    await page.reload();
    await page.locator('[data-answer] table').first().waitFor();
    expect(await page.locator('[data-kind]').nth(1).inputValue()).toBe('laptop-100');
  });

  it('plans with another sheet where one is chosen, and says when an address names none', async () => {
    const page = await opened(`${PLANNER}?sheet=no-such-sheet&devices=65W20V`);
    await page.locator('[data-answer] p').first().waitFor();
    expect(await page.locator('[data-answer]').textContent()).toContain('No published sheet has the address “no-such-sheet”.');
    await page.locator('[data-sheet]').selectOption('ostlewick-lantern-140');
    await page.locator('[data-answer] table').first().waitFor();
    expect(new URL(page.url()).searchParams.get('sheet')).toBe('ostlewick-lantern-140');
    expect(await page.locator('[data-sheet-link] a').getAttribute('href')).toBe(SHEET);
  });

  it('works from the keyboard: add, name, remove, with the focus where the next key belongs', async () => {
    const page = await opened(`${FOUR_PORTS}&devices=5W5V`);
    await page.locator('[data-add]').focus();
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.matches('.devices li:nth-child(2) [data-kind]'))).toBe(true);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('18');
    expect(new URL(page.url()).searchParams.get('devices')).toBe('5W5V_18W9V');
    await page.locator('[data-remove]').nth(1).focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('.devices li').count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.matches('[data-remove]'))).toBe(true);
  });

  it('says what in an address is no device, what has no power, and stops at six devices', async () => {
    const page = await opened(`${FOUR_PORTS}&devices=65W20V_toaster_5W_5W_5W_5W_5W_9W`);
    expect(await page.locator('.devices li').count()).toBe(6);
    expect(await page.locator('[data-add]').isDisabled()).toBe(true);
    expect(await page.locator('[data-answer]').textContent()).toContain('In the address but no device: toaster, 9W.');
    await page.locator('[data-watts]').first().fill('-5');
    expect(await page.locator('[data-answer]').textContent()).toContain('One device has no power between 1 and 240 W');
    expect(await page.locator('[data-watts]').first().getAttribute('aria-invalid')).toBe('true');
  });

  it('says when no offer supplies a device’s voltage, and which sets are not known', async () => {
    const page = await opened(`${FOUR_PORTS}&devices=100W36V_100W20V_65W20V`);
    const answer = (await page.locator('[data-answer]').textContent()) ?? '';
    expect(answer).toContain('no port meets it in full');
    expect(answer).toContain('Not known, left out here: C1 + C3 + A1, C2 + C3 + A1');
  });

  it('keeps to the strict policy of the site', async () => {
    const page = await opened('/base/');
    const refused: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') refused.push(message.text());
    });
    await page.goto(`${shown.origin}${FOUR_PORTS}&devices=65W20V`);
    await page.locator('[data-answer] table').waitFor();
    expect(refused).toEqual([]);
  });

  for (const scheme of ['light', 'dark'] as const) {
    for (const width of [1280, 360]) {
      it(`has no accessibility fault in the ${scheme === 'light' ? 'paper' : 'blueprint'} scheme at ${width} px and is no wider`, async () => {
        const page = await opened(`${FOUR_PORTS}&devices=65W20V_65W20V_27W9VPPS`, {
          viewport: { width, height: 900 },
          colorScheme: scheme,
          bypassCSP: true,
        });
        expect(await axeFaults(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      });
    }
  }
});
