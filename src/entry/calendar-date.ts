import type { DataPath } from '../diagnostics/finding.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** A day as year-month-day that the calendar has; reported and null otherwise. */
export function readDate(context: ReadingContext, text: string | undefined, path: DataPath): string | null {
  if (text === undefined) return null;
  if (isDate(text)) return text;
  const message = `"${text}" is no day of the calendar.`;
  context.findings.push(readingFinding('unreadable-value', atValue(path), message, { advice: 'Write year, month and day: 2026-03-14.' }));
  return null;
}

/** Whether a text is a day that the calendar has: "2026-03-14". */
export function isDate(text: string): boolean {
  const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/u.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return false;
  const leap = month === 2 && ((year % 4 === 0 && year % 100 !== 0) || year % 400 === 0) ? 1 : 0;
  return day >= 1 && day <= (DAYS[month - 1] ?? 0) + leap;
}
