import type { RuleDeclaration } from '../diagnostics/rule-declaration.ts';
import type { DataPath, Severity } from '../diagnostics/finding.ts';

/** Declaration of a rule that the reader of logs reports, so that it has its page and can be explained. */
export type LogRule = RuleDeclaration<string>;

const PRACTICE = 'common practice';

/** Rules that the reader of logs reports: the file, its columns, its rows, what they say together. */
export const LOG_RULES = [
  {
    id: 'log-file-missing',
    title: 'A log is not beside the entry',
    severity: 'error',
    why: 'The figures of the log and its plot would be missing from the page.',
    advice: 'Put the file into the folder of the entry, or correct its name.',
    source: PRACTICE,
  },
  {
    id: 'log-empty',
    title: 'A log has no rows',
    severity: 'error',
    why: 'There is nothing to compute from.',
    advice: 'Export the log again, with its heading and its rows.',
    source: PRACTICE,
  },
  {
    id: 'log-column',
    title: 'A column of a log cannot be found',
    severity: 'error',
    why: 'Its numbers would be missing, or those of another column would stand for them.',
    advice: 'Write the head of the column as the file has it, under "columns" of the log; every log needs "time".',
    source: PRACTICE,
  },
  {
    id: 'log-quantity',
    title: 'A column of a log is named by a word that is not ours',
    severity: 'error',
    why: 'What the numbers mean is told by that word alone.',
    advice:
      'Use time, date, voltage, current, power, temperature (with a place behind it where there are several), ambient, input voltage, input current, input power, energy or charge.',
    source: PRACTICE,
  },
  {
    id: 'log-unit',
    title: 'The unit of a column does not fit',
    severity: 'error',
    why: 'The numbers would be wrong by a power of ten, or of another quantity.',
    advice: 'Write the unit behind the head, as in "current: Ch2 in mA".',
    source: PRACTICE,
  },
  {
    id: 'log-unit-unsaid',
    title: 'A column of a log states no unit',
    severity: 'warning',
    why: 'Many loggers write milliamperes and milliseconds without saying so.',
    advice: 'Write the unit behind the head, as in "current: Ch2 in mA".',
    source: PRACTICE,
  },
  {
    id: 'log-row',
    title: 'A row of a log has another number of cells than its heading',
    severity: 'error',
    why: 'A value would be read from the column of another one; the row is left out.',
    advice: 'Correct the row or delete it; put a cell that holds the separator into double quotes.',
    source: 'RFC 4180, section 2, item 4',
  },
  {
    id: 'log-quote',
    title: 'A double quote in a log is never closed',
    severity: 'error',
    why: 'Everything behind it counts as one cell, so no further row is read.',
    advice: 'Delete the quote, or close it.',
    source: 'RFC 4180, section 2, item 5',
  },
  {
    id: 'log-cell',
    title: 'A cell of a log is not a number',
    severity: 'error',
    why: 'Overflow, a lost sensor or a decimal comma would go into means and sums; the row is left out.',
    advice: 'Delete the row, or leave the cell blank; where the file writes decimal commas, say "decimal: comma".',
    source: PRACTICE,
  },
  {
    id: 'log-blank-cell',
    title: 'A column of a log has blank cells',
    severity: 'warning',
    why: 'Nothing was read there; means and sums leave the rows out.',
    advice: 'Nothing where the logger reads this channel more rarely; else export the log again.',
    source: PRACTICE,
  },
  {
    id: 'log-time',
    title: 'The time of a log does not rise',
    severity: 'error',
    why: 'Two logs in one file, a clock that was set, or a column that is not the time: no sum over time would hold.',
    advice: 'Split the file, or map a finer time column; the row is left out.',
    source: PRACTICE,
  },
  {
    id: 'log-gap',
    title: 'A log has a gap',
    severity: 'note',
    why: 'Nothing is known of the time between; sums bridge it with an interval from the lowest to the highest value of the log.',
    advice: 'Say what happened, or log again.',
    source: PRACTICE,
  },
  {
    id: 'log-power-disagrees',
    title: 'The power in a log is not its volts times its amperes',
    severity: 'warning',
    why: 'One of the three columns is that of another place or has another unit.',
    advice: 'Look at the units and heads of the three columns.',
    source: 'P = V × I for direct current',
  },
  {
    id: 'log-event',
    title: 'An event of a log is not within it',
    severity: 'error',
    why: 'What the event did cannot be looked up.',
    advice: 'Write the time from the first row of the log, as in "20 s: phone plugged into C2".',
    source: PRACTICE,
  },
  {
    id: 'log-instrument',
    title: 'An instrument is named for a column that the log does not have',
    severity: 'warning',
    why: 'Its accuracy would count for nothing.',
    advice: 'Use the words under "columns"; a power that is computed takes the instruments of its volts and amperes.',
    source: PRACTICE,
  },
] as const satisfies readonly LogRule[];

/** Id of a rule on logs. */
export type LogRuleId = (typeof LOG_RULES)[number]['id'];

/** Where a fault of a log is: in the entry that names it, or at a cell of the file (index from 0; null for the whole row). */
export type LogPlace =
  | { readonly in: 'entry'; readonly path: DataPath; readonly part: 'key' | 'value' }
  | { readonly in: 'file'; readonly line: number; readonly cell: number | null };

/** Something that is wrong with a log. */
export interface LogFault {
  readonly rule: LogRuleId;
  readonly message: string;
  readonly at: LogPlace;
  /** Only where it is milder than the rule's own. */
  readonly severity?: Severity;
}
