import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import joined from './joined-program.cjs';

// Runs at the end of every install. Half of a run that has little to do was opening the seven hundred files of the program and its
// packages, once for each thread; joined they are a tenth of that. rolldown is what the site generator joins its own scripts with.

const { FOLDER, ROOT, STAMP, stateOfSources } = joined;

/** What starts a process or a thread of its own, by the name that `src/pipeline/program-part.ts` gives it. */
const PARTS = {
  main: 'src/cli/main.ts',
  'prepare-process': 'src/pipeline/prepare-process.ts',
  'entry-worker': 'src/pipeline/entry-worker.ts',
  'log-worker': 'src/pipeline/log-worker.ts',
  'sheet-page-worker': 'src/pipeline/built-site/sheet-page-worker.ts',
};

/** Packages that look for files of their own. */
const APART = [/^sharp/, /^astro/, /^fontkitten/, /^subset-font/, /^@fontsource/];

const state = stateOfSources();
const fresh = `${FOLDER}.${String(process.pid)}`;
try {
  const { rolldown } = await import('rolldown');
  const input = Object.fromEntries(Object.entries(PARTS).map(([name, file]) => [name, join(ROOT, file)]));
  const bundle = await rolldown({ input, platform: 'node', external: APART, logLevel: 'silent' });
  await bundle.write({ dir: fresh, format: 'esm', entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' });
  mkdirSync(fresh, { recursive: true });
  writeFileSync(join(fresh, STAMP), state);
  rmSync(FOLDER, { recursive: true, force: true });
  renameSync(fresh, FOLDER);
} catch (error) {
  rmSync(fresh, { recursive: true, force: true });
  process.stderr.write(
    `The program was not joined and runs from its sources, which starts more slowly: ${String(error?.message ?? error)}\n`,
  );
}
