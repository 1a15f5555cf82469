import type { Dimension } from '../units/dimension.ts';

/** A word of the entry's `columns`, apart from the time. */
export interface LogQuantity {
  readonly word: string;
  readonly dimension: Dimension;
  /** Unit that a column without one is read in, said in a warning. */
  readonly unit: string;
}

/** What the columns of a log can hold. */
export const LOG_QUANTITIES: readonly LogQuantity[] = [
  { word: 'voltage', dimension: 'voltage', unit: 'V' },
  { word: 'current', dimension: 'current', unit: 'A' },
  { word: 'power', dimension: 'power', unit: 'W' },
  { word: 'temperature', dimension: 'temperature', unit: '°C' },
  { word: 'ambient', dimension: 'temperature', unit: '°C' },
  { word: 'input voltage', dimension: 'voltage', unit: 'V' },
  { word: 'input current', dimension: 'current', unit: 'A' },
  { word: 'input power', dimension: 'power', unit: 'W' },
  { word: 'energy', dimension: 'energy', unit: 'Wh' },
  { word: 'charge', dimension: 'charge', unit: 'Ah' },
];

/** Words for the time base. `date` is for loggers that give the day a column of its own. */
export const TIME_WORDS = ['time', 'date'] as const;

/** The quantity that a word of `columns` names; "temperature case over T1" is a temperature with its place. Null for any other word. */
export function logQuantity(word: string): LogQuantity | null {
  const exact = LOG_QUANTITIES.find((quantity) => quantity.word === word);
  if (exact !== undefined) return exact;
  return /^temperature \S/.test(word) ? { word, dimension: 'temperature', unit: '°C' } : null;
}
