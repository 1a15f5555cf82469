import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

/** Wall time in seconds and the highest resident memory, in MB, summed over the process and all its descendants. */
export interface MeasuredRun {
  readonly seconds: number;
  readonly peakMegabytes: number;
}

interface ProcessRow {
  readonly pid: number;
  readonly parent: number;
  readonly kilobytes: number;
}

function processRows(): ProcessRow[] {
  const rows: ProcessRow[] = [];
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const status = readFileSync(`/proc/${name}/status`, 'utf8');
      rows.push({
        pid: Number(name),
        parent: Number(/^PPid:\s+(\d+)/m.exec(status)?.[1] ?? 0),
        kilobytes: Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1] ?? 0),
      });
    } catch {
      // It ended between the listing and the reading.
    }
  }
  return rows;
}

function treeMegabytes(root: number): number {
  const rows = processRows();
  const family = new Set([root]);
  for (let grown = true; grown;) {
    grown = false;
    for (const row of rows) {
      if (family.has(row.parent) && !family.has(row.pid)) {
        family.add(row.pid);
        grown = true;
      }
    }
  }
  return rows.filter((row) => family.has(row.pid)).reduce((sum, row) => sum + row.kilobytes, 0) / 1024;
}

/** Runs one command to its end and measures it; rejects with the end of its output when it fails. */
export function measuredRun(
  command: string,
  args: readonly string[],
  cwd: string,
  env: Readonly<Record<string, string>> = {},
): Promise<MeasuredRun> {
  return new Promise((resolve, reject) => {
    const started = process.hrtime.bigint();
    const child = spawn(command, [...args], { cwd, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    const keep = (chunk: Buffer): void => {
      output = (output + chunk.toString()).slice(-4000);
    };
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    let peak = 0;
    const timer = setInterval(() => {
      if (child.pid !== undefined) peak = Math.max(peak, treeMegabytes(child.pid));
    }, 100);
    child.on('error', reject);
    child.on('close', (code) => {
      clearInterval(timer);
      const seconds = Number(process.hrtime.bigint() - started) / 1e9;
      if (code === 0) resolve({ seconds, peakMegabytes: peak });
      else reject(new Error(`${command} ${args.join(' ')} ended with ${String(code)}\n${output}`));
    });
  });
}
