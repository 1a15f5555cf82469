import { mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { logsOfEntries } from '../../src/pipeline/logs-of-entries.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { readManyLogs } from '../../src/pipeline/read-many-logs.ts';
import { logFile, readingOf, steadyRows } from './a-log.ts';
import { contentFolder, entryText, temporaryFolder, writeFiles } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

describe('logs of many entries', () => {
  test('figures are quoted in the text by name, and a name that is none is found', async () => {
    const log = 'logs:\n  full load: { file: run.csv, columns: { time: "t (s)", voltage: "U (V)", current: "I (A)" } }\n';
    const text = 'It gave :value[full-load.energy] at :value[full-load.mean-power].\n\n:value[full-load.enery]\n';
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', text, log),
      'teardowns/a/run.csv': `t (s),U (V),I (A)\n${steadyRows()}`,
    });
    const { diagnostics } = await prepareIn(content, 'build');
    expect(diagnostics.filter(({ rule }) => rule.startsWith('prose')).map(({ message }) => message)).toEqual([
      'There is no value "full-load.enery" to name; did you mean "full-load.energy"?',
    ]);
  });

  test('a log is read once: a changed text takes its figures from the cache, a changed log does not', async () => {
    const cache = temporaryFolder();
    const folder = temporaryFolder();
    const text = entryText('A', 'x\n', 'logs: { run: run.csv }\n');
    const job = { source: { slug: 'a', file: 'teardowns/a/index.md', path: join(folder, 'index.md') }, text };
    const rows = async (): Promise<number | undefined> =>
      (await logsOfEntries([job], { cache, version: 'v1' })).get('teardowns/a/index.md')?.[0]?.summary?.rows;
    writeFiles(folder, { 'index.md': text, 'run.csv': `time (s),voltage (V)\n0,5\n1,5\n` });
    expect(await rows()).toBe(2);
    const kept = join(cache, 'logs', 'v1');
    const [name = ''] = readdirSync(kept);
    const marked = JSON.stringify({ id: 'run', file: 'run.csv', summary: { rows: 77 }, inEntry: [], inFile: [] });
    writeFileSync(join(kept, name), marked);
    utimesSync(join(folder, 'run.csv'), 1, 1);
    expect(await rows()).toBe(77);
    writeFiles(folder, { 'run.csv': `time (s),voltage (V)\n0,5\n1,5\n2,5\n` });
    expect(await rows()).toBe(3);
  });

  test('an entry is prepared again when its log changes, and only then', async () => {
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', 'x\n', 'logs: { run: run.csv }\n'),
      'teardowns/a/run.csv': 'time (s),voltage (V)\n0,5\n1,5\n',
    });
    const work = temporaryFolder();
    const parsed = async (): Promise<number> =>
      (await prepare({ content, prepared: join(work, 'prepared'), cache: join(work, 'cache'), mode: 'check' })).counts.parsed;
    expect([await parsed(), await parsed()]).toEqual([1, 0]);
    writeFiles(content, { 'teardowns/a/run.csv': 'time (s),voltage (V)\n0,5\n1,6\n' });
    expect([await parsed(), await parsed()]).toEqual([1, 0]);
  });

  test('several long logs are read by several threads and come back in order; one that cannot be read is a finding', async () => {
    const folder = temporaryFolder();
    const rows = Array.from({ length: 120_000 }, (_, row) => `${row},20.000,1.000`).join('\n');
    writeFiles(folder, { 'one.csv': `t (s),U (V),I (A)\n${rows}\n`, 'two.csv': `t (s),U (V),I (A)\n${rows}\n120000,21,1\n` });
    mkdirSync(join(folder, 'three.csv'));
    const jobs = ['one', 'two', 'three'].map((id) => ({ path: join(folder, `${id}.csv`), log: logFile({ id, file: `${id}.csv` }) }));
    const readings = await readManyLogs(jobs);
    expect(readings.map(({ id, summary }) => [id, summary?.rows])).toEqual([
      ['one', 120_000],
      ['two', 120_001],
      ['three', undefined],
    ]);
    expect(readings[2]?.inFile.map(({ rule }) => rule)).toEqual(['file-unreadable']);
  });

  test('a million rows are read and reduced to some hundred points, with both exact extremes among them', async () => {
    const rows = Array.from(
      { length: 1_000_000 },
      (_, row) => `${row},${row === 654_321 ? '21.750' : row === 123_456 ? '3.125' : '20.000'},1.000`,
    );
    const { summary, inFile } = await readingOf(`t (s),U (V),I (A)\n${rows.join('\n')}\n`);
    expect(inFile).toEqual([]);
    expect(summary?.rows).toBe(1_000_000);
    const volts = summary?.channels.find(({ quantity }) => quantity === 'voltage');
    expect([volts?.lowest.value.nominal, volts?.lowest.at, volts?.highest.value.nominal, volts?.highest.at]).toEqual([
      3.125, 123_456, 21.75, 654_321,
    ]);
    const points = summary?.curves.find(({ quantity }) => quantity === 'voltage')?.points ?? [];
    expect(points.length).toBeLessThan(500);
    expect(points).toContainEqual([123_456, 3.125]);
    expect(points).toContainEqual([654_321, 21.75]);
  });
});
