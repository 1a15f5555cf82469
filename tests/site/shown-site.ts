import type { Server } from 'node:http';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe } from 'vitest';
import { serveSite, type BuiltSite } from './built-site.ts';
import { startChromium } from './chromium.ts';

export type WindowOptions = Parameters<Browser['newContext']>[0];

/** A small site that is built and served for the tests of one file, and a browser that looks at it. */
export interface ShownSite {
  readonly site: BuiltSite;
  /** Where it is served, without the base path: `http://127.0.0.1:40001`. */
  readonly origin: string;
  /** Tests that look at pages in the browser; skipped, and said aloud, on a machine without one, a failure under CI (`startChromium`). */
  readonly describeInBrowser: ReturnType<typeof describe.skipIf>;
  /** A window of its own, with nothing remembered. */
  readonly openWindow: (options: WindowOptions) => Promise<BrowserContext>;
  /** One page, loaded, in a window of its own. */
  readonly opened: (address: string, options?: WindowOptions) => Promise<Page>;
  /** Opens every given page in one window and hands it to `look`. */
  readonly visit: (
    addresses: readonly string[],
    options: WindowOptions,
    look: (page: Page, address: string) => Promise<void>,
  ) => Promise<void>;
}

/** To be called once at the head of a test file: the site is there when the first test runs, and gone after the last. */
export async function showSite(build: () => Promise<BuiltSite>): Promise<ShownSite> {
  const browser = await startChromium();
  let shown: { readonly site: BuiltSite; readonly origin: string; readonly server: Server } | null = null;
  beforeAll(async () => {
    const site = await build();
    shown = { site, ...(await serveSite(site)) };
  });
  afterAll(async () => {
    await browser?.close();
    shown?.server.close();
  });
  const there = (): { readonly site: BuiltSite; readonly origin: string } => {
    if (shown === null) throw new Error('The site is built before the first test, not while tests are collected.');
    return shown;
  };
  const openWindow = async (options: WindowOptions): Promise<BrowserContext> => {
    if (browser === null) throw new Error('No browser: put this test under describeInBrowser.');
    return await browser.newContext(options);
  };
  const visit: ShownSite['visit'] = async (addresses, options, look) => {
    const context = await openWindow(options);
    const page = await context.newPage();
    for (const address of addresses) {
      await page.goto(there().origin + address, { waitUntil: 'load' });
      await look(page, address);
    }
    await context.close();
  };
  return {
    get site() {
      return there().site;
    },
    get origin() {
      return there().origin;
    },
    // No browser, nothing to look with: `startChromium` warns, and throws where CI promises one.
    describeInBrowser: describe.skipIf(browser === null),
    openWindow,
    opened: async (address, options) => {
      const page = await (await openWindow(options)).newPage();
      await page.goto(there().origin + address);
      return page;
    },
    visit,
  };
}
