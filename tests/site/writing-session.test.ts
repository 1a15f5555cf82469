import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startDev, type DevSession } from '../../src/pipeline/dev-site.ts';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';

const room = mkdtempSync(join(tmpdir(), 'writing-'));
let session: DevSession | null = null;
let origin = '';

beforeAll(async () => {
  // The generator serves no pages to a process that a test runner marks as its own.
  delete process.env['VITEST'];
  const ready = Promise.withResolvers<string>();
  session = await startDev({
    ...{ content: join(PROJECT_ROOT, 'demo'), prepared: join(room, 'prepared'), cache: join(room, 'cache'), base: '/', port: 4873 },
    onPrepared: () => Promise.resolve(),
    onFault: (message) => {
      ready.reject(new Error(message));
    },
    onServer: (line) => {
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(line)?.[0];
      if (address !== undefined) ready.resolve(address);
    },
  });
  origin = await ready.promise;
}, 60_000);

afterAll(async () => {
  session?.stop();
  await session?.ended;
  rmSync(room, { recursive: true, force: true });
});

it.each(['/', '/finder/', '/parts/', '/teardowns/fennimoor-deskway-100/', '/methods/voltage-stress-ratio/'])(
  'while writing, %s is a whole page with nothing left to fill in',
  async (path) => {
    const page = await fetch(origin + path);
    const html = await page.text();
    expect([page.status, html.includes('<h1>') || html.includes('<h1 '), html.includes('<!--seamline:')]).toEqual([200, true, false]);
  },
);

it.each(['/finder/rows.json', '/search/start.json', '/compare/sheets/fennimoor-deskway-100.json', '/data/devices.csv'])(
  'while writing, %s is there for the scripts and the readers of data',
  async (path) => {
    const file = await fetch(origin + path);
    expect([file.status, (await file.text()).length > 100]).toEqual([200, true]);
  },
);

it('while writing, an address that no page has is not found', async () => {
  expect((await fetch(`${origin}/nowhere/`)).status).toBe(404);
});
