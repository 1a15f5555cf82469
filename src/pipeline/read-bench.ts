import { join } from 'node:path';
import { NO_BENCH, type Bench } from '../entry/bench.ts';
import { benchInText } from './bench-in-text.ts';
import { standsThere, staysInside } from './inside-content.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { readText } from './read-text.ts';

/** Name of the file of the bench in the content folder. */
const BENCH_FILE = 'bench.yaml';

/** Reads `bench.yaml`; every fault is a finding with its place, and what could be read stands. A site may have none. */
export function readBench(content: string): { readonly bench: Bench; readonly findings: readonly FileFinding[] } {
  const path = join(content, BENCH_FILE);
  const outside: FileFinding[] = [];
  if (!standsThere(path) || !staysInside(path, content, BENCH_FILE, outside)) return { bench: NO_BENCH, findings: outside };
  const read = readText(path);
  if (!read.ok) return { bench: NO_BENCH, findings: [{ file: BENCH_FILE, finding: read.finding }] };
  const { bench, faults } = benchInText(read.text);
  const findings = faults.map(({ message, line, column }) => ({
    file: BENCH_FILE,
    finding: pipelineFinding('bench-invalid', message, { in: 'file', line, column }),
  }));
  return { bench, findings };
}
