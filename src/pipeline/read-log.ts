import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { CsvError, parse } from 'csv-parse';
import type { Finding } from '../diagnostics/finding.ts';
import type { LogFile } from '../entry/entry.ts';
import { concludeLog, type ConcludedLog } from '../logs/conclude-log.ts';
import { logColumns } from '../logs/log-columns.ts';
import { logReader, type LogReader } from '../logs/log-reader.ts';
import type { LogFault } from '../logs/log-rule.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import { logFinding, logFindings } from './log-findings.ts';
import { logLayout, type LayoutFault, type LogLayout } from './log-heading.ts';
import { pipelineFinding } from './pipeline-rule.ts';

/** What came out of one log. Plain data. */
export interface LogReading {
  readonly id: string;
  readonly file: string;
  readonly summary: LogSummary | null;
  /** Findings in the entry that names the log. */
  readonly inEntry: readonly Finding[];
  /** Findings in the file of the log, with line and column. */
  readonly inFile: readonly Finding[];
}

/** A cell of a log is a few characters; a quote that is never closed makes one of the whole file. Bytes. */
const LARGEST_ROW = 1 << 16;

/** Reads a log from disk, row by row: what is kept are numbers, eight bytes each, never the text. */
export async function readLog(path: string, log: LogFile): Promise<LogReading> {
  const layout = logLayout(path, log);
  if (typeof layout === 'string') return unreadable(layout, log);
  const { summary, faults } = await readRows(path, log, layout);
  return { id: log.id, file: log.file, summary, ...(await logFindings(path, faults, layout.delimiter)) };
}

async function readRows(path: string, log: LogFile, layout: LogLayout): Promise<ConcludedLog> {
  const { columns, faults } = logColumns(log, layout.heading);
  if (columns === null) return { summary: null, faults };
  const reader = logReader(columns, log.decimal);
  const broken = await feed(path, layout, reader);
  const concluded = concludeLog(log, reader.end());
  return { summary: concluded.summary, faults: [...faults, ...broken, ...concluded.faults] };
}

/** Gives every row of the file to the reader; a fault where the rest of the file could not be cut into rows. */
async function feed(path: string, { delimiter, firstLine }: LogLayout, reader: LogReader): Promise<readonly LogFault[]> {
  const source = createReadStream(path);
  let line = firstLine;
  let mayHoldBreaks = false;
  source.on('data', (chunk) => {
    mayHoldBreaks ||= chunk.includes('"');
  });
  const rows = parse({
    delimiter,
    from_line: firstLine,
    bom: true,
    relax_quotes: true,
    relax_column_count: true,
    max_record_size: LARGEST_ROW,
  });
  rows.on('data', (cells: readonly string[]) => {
    reader.row(cells, line);
    line += 1;
    if (mayHoldBreaks) for (const cell of cells) if (cell.includes('\n')) line += cell.split('\n').length - 1;
  });
  try {
    await pipeline(source, rows);
    return [];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const message = 'A double quote is opened in this row and never closed; nothing behind it is read';
    return [{ rule: 'log-quote', message, at: { in: 'file', line, cell: null } }];
  }
}

function unreadable(fault: LayoutFault, { id, file }: LogFile): LogReading {
  const at = { in: 'file', line: 1, column: 1 } as const;
  const finding =
    fault === 'empty'
      ? logFinding({ rule: 'log-empty', message: 'The file is empty' }, at)
      : pipelineFinding(
          'file-not-utf8',
          fault === 'UTF-16' ? 'The log is UTF-16 text, not UTF-8' : 'The heading of the log is not UTF-8 text',
          at,
        );
  return { id, file, summary: null, inEntry: [], inFile: [finding] };
}
