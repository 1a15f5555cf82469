import { spawnSync } from 'node:child_process';
import { createReadStream, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { parse } from 'csv-parse';
import { seededRandom } from './random.ts';

const WORK = join(import.meta.dirname, '.work', 'logs');
const ROWS = 1_000_000;
const RUNS = 5;
const LIMITS = { seconds: 1.5, megabytes: 200, ratio: 1.5 };

/** What one run of one way of reading took. */
interface Taken {
  readonly seconds: number;
  /** Processor time of the thread that reads: what else the machine does at the moment is not counted. */
  readonly processorSeconds: number;
  readonly megabytes: number;
}

/** The ways of reading that are measured, each in a process of its own. */
const WAYS: Readonly<Record<string, (folder: string) => Promise<unknown>>> = {
  /** Nothing but the parser: every row is cut into its cells and counted. */
  async bare(folder) {
    let rows = 0;
    const parser = parse();
    parser.on('data', () => (rows += 1));
    await pipeline(createReadStream(join(folder, 'one.csv')), parser);
    return rows;
  },
  /** Read, checked, reduced, as `prepare` does. */
  read: async (folder) => (await readings(folder, ['one'], false)).length,
  'two logs': async (folder) => (await readings(folder, ['one', 'two'], false)).length,
  cached: async (folder) => (await readings(folder, ['one'], true)).length,
};

async function readings(folder: string, names: readonly string[], isKept: boolean): Promise<readonly unknown[]> {
  const { logsOfEntries } = await import('../src/pipeline/logs-of-entries.ts');
  const text = `---\nlogs:\n${names.map((name) => `  ${name}: ${name}.csv\n`).join('')}---\n`;
  const source = { slug: 'bench', file: 'teardowns/bench/index.md', path: join(folder, 'index.md') };
  const read = await logsOfEntries([{ source, text }], isKept ? { cache: join(folder, 'cache'), version: 'bench' } : null);
  const logs = [...read.values()].flat();
  if (logs.length !== names.length || logs.some(({ summary }) => summary?.rows !== ROWS)) throw new Error('a log was not read whole');
  return logs;
}

function generateLog(seed: number): string {
  const next = seededRandom(seed);
  const rows = ['time (s),voltage (V),current (A)'];
  for (let row = 0; row < ROWS; row += 1) {
    const amps = row < 120_000 ? 5 : 3.25;
    rows.push(`${(row / 100).toFixed(2)},${(20.05 - 0.01 * amps + 0.01 * next()).toFixed(4)},${(amps + 0.005 * next()).toFixed(4)}`);
  }
  return `${rows.join('\n')}\n`;
}

async function measureHere(way: string): Promise<void> {
  const run = WAYS[way];
  if (run === undefined) throw new Error(`no way of reading is called ${way}`);
  // The program itself is loaded before the clock starts, as it is where many entries are prepared.
  if (way !== 'bare') await import('../src/pipeline/logs-of-entries.ts');
  const start = performance.now();
  const processor = process.threadCpuUsage();
  await run(WORK);
  const { user, system } = process.threadCpuUsage(processor);
  const taken: Taken = {
    seconds: (performance.now() - start) / 1000,
    processorSeconds: (user + system) / 1e6,
    megabytes: process.resourceUsage().maxRSS / 1024,
  };
  process.stdout.write(JSON.stringify(taken));
}

function measured(way: string): Taken {
  const child = spawnSync(process.execPath, [import.meta.filename, way], { encoding: 'utf8' });
  if (child.status !== 0) throw new Error(`${way} ended with ${String(child.status)}\n${child.stderr}`);
  return JSON.parse(child.stdout) as Taken;
}

function best(runs: readonly Taken[]): Taken {
  const least = (of: (run: Taken) => number): number => Math.min(...runs.map(of));
  return {
    seconds: least((run) => run.seconds),
    processorSeconds: least((run) => run.processorSeconds),
    megabytes: Math.max(...runs.map((run) => run.megabytes)),
  };
}

function line(name: string, { seconds, processorSeconds, megabytes }: Taken, remark = ''): void {
  const numbers = `${seconds.toFixed(2).padStart(6)} s ${processorSeconds.toFixed(2).padStart(6)} s processor ${megabytes.toFixed(0).padStart(5)} MB`;
  console.log(`${name.padEnd(34)} ${numbers}  ${remark}`);
}

function compare(): void {
  mkdirSync(WORK, { recursive: true });
  writeFileSync(join(WORK, 'one.csv'), generateLog(1));
  writeFileSync(join(WORK, 'two.csv'), generateLog(2));
  console.log(`logs of ${String(ROWS)} rows and 3 columns; the best time and the highest memory of ${String(RUNS)} runs, in turn\n`);
  // In turn, so that a busy moment of the machine meets both.
  const runs = Array.from({ length: RUNS }, () => ({ bare: measured('bare'), read: measured('read') }));
  const bare = best(runs.map((run) => run.bare));
  const read = best(runs.map((run) => run.read));
  const ratio = read.processorSeconds / bare.processorSeconds;
  const isSlow = read.seconds > LIMITS.seconds || read.megabytes > LIMITS.megabytes || ratio > LIMITS.ratio;
  line('bare csv-parse loop', bare);
  line('read, checked, reduced', read, `${ratio.toFixed(2)} × the bare loop${isSlow ? ': TOO SLOW OR TOO LARGE' : ''}`);
  line('two such logs, on two threads', best([measured('two logs'), measured('two logs'), measured('two logs')]));
  measured('cached');
  line('out of the cache, file hashed', best([measured('cached'), measured('cached'), measured('cached')]));
}

const [, , way] = process.argv;
if (way === undefined) compare();
else await measureHere(way);
