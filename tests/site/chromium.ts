import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

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
    // The packed browser is made for one kind of machine; on any other there is none, which the caller says.
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
