import { existsSync } from 'node:fs';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Path of a Chromium: the one named by CHROMIUM_PATH, the system's, or the packed one; null where there is none. */
async function chromiumPath(): Promise<string | null> {
  for (const path of [process.env['CHROMIUM_PATH'], '/usr/bin/chromium']) {
    if (path !== undefined && path !== '' && existsSync(path)) return path;
  }
  try {
    const packed = (await import('@sparticuz/chromium')).default;
    return await packed.executablePath();
  } catch {
    return null;
  }
}

/** A real browser, or null where the machine has none; under CI a missing browser is a failure, elsewhere it is said aloud. */
export async function startChromium(): Promise<Browser | null> {
  const executablePath = await chromiumPath();
  if (executablePath === null) {
    const words = 'No Chromium found (CHROMIUM_PATH, /usr/bin/chromium, @sparticuz/chromium): the built pages are not looked at.';
    if (process.env['CI'] !== undefined && process.env['CI'] !== '') throw new Error(words);
    console.warn(`\n*** ${words} ***\n`);
    return null;
  }
  return await chromium.launch({ executablePath, args: FLAGS });
}

export type WindowOptions = Parameters<Browser['newContext']>[0];

/** A window of its own, with nothing remembered. */
export async function openWindow(browser: Browser | null, options: WindowOptions): Promise<BrowserContext> {
  if (browser === null) throw new Error('no browser');
  return await browser.newContext(options);
}

/** Opens every given page in one window and hands it to `look`. */
export async function visitPages(
  browser: Browser | null,
  origin: string,
  pages: readonly string[],
  options: WindowOptions,
  look: (page: Page, address: string) => Promise<void>,
): Promise<void> {
  const context = await openWindow(browser, options);
  const page = await context.newPage();
  for (const address of pages) {
    await page.goto(origin + address, { waitUntil: 'load' });
    await look(page, address);
  }
  await context.close();
}
