import { expect, test } from 'vitest';
import { runChecks } from './run-checks.ts';
import { readOnBench } from '../../src/derived/bench/read-on-bench.ts';
import { derive } from '../../src/derived/derive.ts';
import type { LogSummary } from '../../src/logs/log-summary.ts';
import { concludeLog } from '../../src/logs/conclude-log.ts';
import { logColumns } from '../../src/logs/log-columns.ts';
import { logReader } from '../../src/logs/log-reader.ts';
import { benchInText } from '../../src/pipeline/bench-in-text.ts';
import { logFile } from '../pipeline/a-log.ts';
import { checkText } from './read-example.ts';

const BENCH = benchInText('instruments: { meter: { name: AC power meter, accuracy: { efficiency: 1 % } } }').bench;

/** Severity and words of the rule for an entry with these sections, its instruments on the bench. */
function said(sections: string, logs: readonly LogSummary[] = []): readonly string[] {
  const { entry, reading } = checkText(
    'lm',
    `---\ntitle: Invented\ndevice: { maker: Larkmoor, model: LM, kind: wall charger }\nnameplate: { input: 100-240 V~ 50/60 Hz 1.6 A }\n${sections}\n---\n`,
  );
  if (entry === null) throw new Error(JSON.stringify(reading));
  const onBench = readOnBench(entry, BENCH).entry;
  return runChecks({ entry: onBench, derived: derive(onBench, logs), text: '', textStart: 0 })
    .filter(({ rule }) => rule === 'efficiency-plausible')
    .map(({ severity, message }) => `${severity} ${message}`);
}

test('97.4 % on a meter good for 1 % may be 96.4 %: undecided, and only noted', () => {
  const run = (more: string): string =>
    `measurements: { efficiency: { line: 230 V, load: 100 %, efficiency: 97.4 %, at: connector${more} } }`;
  expect(said(run(', instrument: meter'))).toEqual([
    'note Efficiency 97.4 %: 96.4 to 98.4 % by what the instruments leave open, so that it may lie below 97 %.',
  ]);
  expect(said(run(''))).toEqual(['error Efficiency 97.4 %: above 97 % from plug to port. Is it the efficiency of one stage?']);
});

test('readings that give more than 97 % show their working', () => {
  expect(said('measurements: { efficiency: { line: 230 V, output: 20 V, at: connector, points: { 3 A: 20.00 V 61.0 W } } }')).toEqual([
    'error 20.00 V × 3 A of 61.0 W is an efficiency of 98.4 %: above 97 % from plug to port. Is it the efficiency of one stage?',
  ]);
});

test('a log of both sides is held to the same limit', () => {
  const log = logFile({ columns: { time: 't (s)', power: 'out (W)', 'input power': 'in (W)' } });
  const { columns } = logColumns(log, { heads: ['t (s)', 'out (W)', 'in (W)'], units: null });
  if (columns === null) throw new Error('the columns of the test are not those of its heading');
  const reader = logReader(columns, 'point');
  for (let row = 0; row <= 100; row += 1) reader.row([String(row), '60.00', '61.00'], row + 2);
  const { summary } = concludeLog(log, reader.end());
  expect(summary === null ? [] : said('logs: { run: run.csv }', [summary])).toEqual([
    'error Mean power out of mean power in of the log run is an efficiency of 98.4 %: above 97 % from plug to port. Is it the efficiency of one stage?',
  ]);
});
