import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'part-number-date-code',
  title: 'A part number that is only a date code',
  severity: 'warning',
  why: 'Year and week are printed on every part of that week: parts that have nothing to do with each other would share a page.',
  advice: 'Write it as marking:, and the number as number: once the part is identified.',
  source: commonPractice('date codes of four digits, year and week or week and year'),
};

export const partNumberDateCode: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) => {
    const reading = part.number === null ? null : dateCode(part.number);
    if (reading === null) return [];
    const subject = part.references.join(', ');
    return [
      findingOf(RULE, atValue(...part.path, 'number'), {
        message: `${subject}: ${part.number ?? ''} reads as a date code, ${reading}.`,
        subject,
      }),
    ];
  });
}

/** "year 2025, week 39" for 2539, 3925 or 202539; null for anything else. Years 2005 to 2039, weeks 1 to 53. */
function dateCode(number: string): string | null {
  const match = /^(?:20)?(?<first>\d{2})[-/ ]?(?<second>\d{2})$/u.exec(number.trim());
  const first = Number(match?.groups?.['first']);
  const second = Number(match?.groups?.['second']);
  const [year, week] = isYear(first) && isWeek(second) ? [first, second] : [second, first];
  if (match === null || !isYear(year) || !isWeek(week)) return null;
  return `year ${String(2000 + year)}, week ${String(week)}`;
}

function isYear(number: number): boolean {
  return number >= 5 && number <= 39;
}

function isWeek(number: number): boolean {
  return number >= 1 && number <= 53;
}
