import type { LogFile } from '../../src/entry/entry.ts';
import { concludeLog } from '../../src/logs/conclude-log.ts';
import { logColumns } from '../../src/logs/log-columns.ts';
import { logReader } from '../../src/logs/log-reader.ts';
import type { LogSummary } from '../../src/logs/log-summary.ts';

/** A log of 40 minutes at 20 V: 5 A for ten minutes, then 3.25 A; a row every two seconds. Made by the reader that reads a reviewer's logs. */
export function foldBackLog(more: Partial<LogFile> = {}): LogSummary {
  const log: LogFile = {
    ...{ id: 'full load', file: 'c1.csv', columns: { time: 't (s)', voltage: 'U (V)', current: 'I (A)' }, decimal: 'point' },
    ...{ port: 'C1', line: '230 V', ambient: '25 °C', events: {}, instrument: null, method: null, note: null, path: ['logs', 'full load'] },
    ...more,
  };
  const rows = Array.from({ length: 1201 }, (_, row) => [String(row * 2), '20.00', row < 300 ? '5.000' : '3.250']);
  return summaryOf(log, ['t (s)', 'U (V)', 'I (A)'], rows);
}

/** A log of any columns, made by the same reader. */
export function logOf(more: Partial<LogFile>, heads: readonly string[], rows: readonly (readonly string[])[]): LogSummary {
  const log: LogFile = {
    ...{ id: 'full load', file: 'c1.csv', columns: {}, decimal: 'point', port: 'C1', line: null, ambient: null },
    ...{ events: {}, instrument: null, method: null, note: null, path: ['logs', 'full load'] },
    ...more,
  };
  return summaryOf(log, heads, rows);
}

function summaryOf(log: LogFile, heads: readonly string[], rows: readonly (readonly string[])[]): LogSummary {
  const { columns } = logColumns(log, { heads: [...heads], units: null });
  if (columns === null) throw new Error('the columns of the test are not those of its heading');
  const reader = logReader(columns, 'point');
  for (const [row, cells] of rows.entries()) reader.row(cells, row + 2);
  const { summary } = concludeLog(log, reader.end());
  if (summary === null) throw new Error('the log of the test has no rows');
  return summary;
}
