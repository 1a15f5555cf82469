import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { generateContent } from './generated-content.ts';
import { measuredRun, type MeasuredRun } from './measured-run.ts';

const HERE = import.meta.dirname;
const ROOT = join(HERE, '..');
const WORK = join(HERE, '.work');
const NODE = process.execPath;

function fresh(folder: string): string {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  return folder;
}

function installComparisons(): void {
  if (existsSync(join(HERE, 'node_modules/@11ty/eleventy'))) return;
  const outcome = spawnSync('npm', ['install', '--no-audit', '--no-fund', '--no-package-lock'], { cwd: HERE, stdio: 'inherit' });
  if (outcome.status !== 0) throw new Error('the bench could not install what it compares with');
}

function bytesPerPage(folder: string): number {
  const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.html'));
  const bytes = pages.reduce((sum, name) => sum + statSync(join(folder, name)).size, 0);
  return bytes / Math.max(1, pages.length);
}

async function plainAstro(content: string): Promise<MeasuredRun> {
  const site = fresh(join(WORK, 'plain-astro'));
  cpSync(join(HERE, 'plain-astro'), site, { recursive: true });
  const astro = join(ROOT, 'node_modules/astro/bin/astro.mjs');
  return measuredRun(NODE, [astro, 'build', '--silent'], site, {
    BENCH_CONTENT: join(content, 'teardowns'),
    ASTRO_TELEMETRY_DISABLED: '1',
  });
}

async function plainEleventy(content: string): Promise<MeasuredRun> {
  const site = fresh(join(WORK, 'plain-eleventy'));
  cpSync(join(HERE, 'plain-eleventy/eleventy.config.js'), join(site, 'eleventy.config.js'));
  cpSync(join(HERE, 'plain-eleventy/includes/sheet.njk'), join(site, 'input/_includes/sheet.njk'), { recursive: true });
  cpSync(join(HERE, 'plain-eleventy/includes/index.njk'), join(site, 'input/index.njk'), { recursive: true });
  cpSync(join(content, 'teardowns'), join(site, 'input/teardowns'), { recursive: true });
  writeFileSync(join(site, 'package.json'), '{ "type": "module", "private": true }\n');
  writeFileSync(join(site, 'input/teardowns/teardowns.json'), '{ "layout": "sheet.njk" }\n');
  return measuredRun(NODE, [join(HERE, 'node_modules/@11ty/eleventy/cmd.cjs')], site);
}

/** As an install ends: what is measured is what a user runs. */
function joinProgram(): void {
  spawnSync(NODE, [join(ROOT, 'bin/join-program.mjs')], { stdio: 'inherit' });
}

function seamline(command: string, content: string, extra: readonly string[] = []): Promise<MeasuredRun> {
  return measuredRun(NODE, [join(ROOT, 'bin/seamline.cjs'), command, '--content', content, ...extra], WORK, {
    SEAMLINE_CACHE: join(WORK, 'cache'),
    ASTRO_TELEMETRY_DISABLED: '1',
  });
}

function changeOneEntry(content: string): void {
  const slug = readdirSync(join(content, 'teardowns')).sort()[0] ?? '';
  const file = join(content, 'teardowns', slug, 'index.md');
  writeFileSync(file, `${readFileSync(file, 'utf8')}\nOne more sentence.\n`);
}

function row(name: string, run: MeasuredRun, against: readonly [string, MeasuredRun][] = []): void {
  const ratios = against.map(([label, other]) => `${(run.seconds / other.seconds).toFixed(2)} × ${label}`).join(', ');
  console.log(`${name.padEnd(34)} ${run.seconds.toFixed(2).padStart(7)} s ${run.peakMegabytes.toFixed(0).padStart(6)} MB  ${ratios}`);
}

async function main(): Promise<void> {
  const count = Number(process.argv[2] ?? 1000);
  if (!Number.isInteger(count) || count < 1) throw new Error('usage: npm run bench -- [number of entries]');
  installComparisons();
  joinProgram();
  fresh(WORK);
  spawnSync(NODE, [join(HERE, 'derive-time.ts')], { stdio: 'inherit' });
  const content = join(WORK, 'content');
  generateContent(content, count);
  console.log(`\n${count} generated entries; one run each on this machine, times within about 15 %\n`);

  const astro = await plainAstro(content);
  row('plain Astro site, cold', astro);
  const eleventy = await plainEleventy(content);
  row('plain Eleventy site, cold', eleventy);

  const out = ['--out', join(WORK, 'out')];
  row('check, cold', await seamline('check', content));
  row('check, warm', await seamline('check', content));
  rmSync(join(WORK, 'cache'), { recursive: true, force: true });
  const cold = await seamline('build', content, out);
  row('build, cold', cold, [
    ['Astro cold', astro],
    ['Eleventy', eleventy],
  ]);
  row('build, warm', await seamline('build', content, out), [
    ['Astro cold', astro],
    ['Eleventy', eleventy],
  ]);
  changeOneEntry(content);
  row('build, one entry changed', await seamline('build', content, out), [['Astro cold', astro]]);
  console.log(
    `\npeak memory ${(cold.peakMegabytes / astro.peakMegabytes).toFixed(2)} × Astro; output ${(bytesPerPage(join(WORK, 'out')) / 1024).toFixed(1)} KB a page`,
  );
}

await main();
console.log();
spawnSync(NODE, [join(HERE, 'logs.ts')], { stdio: 'inherit' });
spawnSync(NODE, [join(HERE, 'photos.ts')], { stdio: 'inherit' });
console.log();
spawnSync(NODE, [join(HERE, 'figures.ts')], { stdio: 'inherit' });
