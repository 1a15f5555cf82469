import type { DataPath } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { EntryEvidence, TurnsRatio } from './entry.ts';
import { reportRemarks, type ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';
import { splitEvidence } from './split-evidence.ts';
import { EXACT_DIGITS } from '../values/supported-digits.ts';

/** A text of a stage that is about its transformer, at its place. */
export interface WindingText {
  readonly text: string | undefined;
  readonly path: DataPath;
  /** How it is known where it does not say so itself. */
  readonly evidence: EntryEvidence;
}

/** "35:4:4", "6:1", "22 : 4 : 5 : 13". */
export function readTurns(
  context: ReadingContext,
  { text: written, path, evidence }: WindingText,
): { readonly turns: readonly number[]; readonly turnsEvidence: EntryEvidence } {
  const split = splitEvidence(written ?? '');
  const turnsEvidence = split.evidence ?? evidence;
  if (written === undefined) return { turns: [], turnsEvidence };
  const turns = split.text.split(':').map((piece) => piece.trim());
  if (turns.length > 1 && turns.every(isCount)) return { turns: turns.map(Number), turnsEvidence };
  refuse(context, path, `"${split.text}" is no set of turns.`, turnsAdvice(split.text));
  return { turns: [], turnsEvidence };
}

function isCount(piece: string): boolean {
  return /^\d{1,4}(?:\.\d+)?$/u.test(piece) && Number(piece) > 0;
}

function turnsAdvice(text: string): string {
  const usual = 'Write the windings with colons, primary first: 35:4:4.';
  return /\d/u.test(text) && !text.includes(':') ? `${usual} A ratio in one number has its own field: turns ratio: ${bare(text)}.` : usual;
}

function bare(text: string): string {
  return /[\d.,]+/u.exec(text)?.[0] ?? text;
}

/** Labels that people put before a ratio, and whether they turn it round. */
const LABEL =
  /^\s*(?:(?<up>[na](?![a-z])|Np\s*[/:]\s*Ns|primary\s*(?:[/:]|to)\s*secondary)|(?<down>Ns\s*[/:]\s*Np|secondary\s*(?:[/:]|to)\s*primary))\s*=?\s*/iu;

/**
 * "5.67", "n = 5.67", "5.67 : 1", "34/6", "12.0 V : 2.12 V" as two windings measured under test, "Ns/Np = 0.176" turned round. Primary over
 * secondary, as it stands, where no label says otherwise: whether that fits the turns is for a check.
 */
export function readTurnsRatio(context: ReadingContext, { text: written, path, evidence: usual }: WindingText): TurnsRatio | null {
  if (written === undefined) return null;
  const { text, evidence } = splitEvidence(written);
  const label = LABEL.exec(text);
  const pieces = text
    .slice(label?.[0].length ?? 0)
    .split(/\s*[:/]\s*|\s+to\s+/u)
    .map((piece) => piece.trim());
  const [first, second] = label?.groups?.['down'] === undefined ? pieces : [...pieces, ...(pieces.length === 1 ? ['1'] : [])].reverse();
  const known = { evidence: evidence ?? usual, path };
  const ratio = pieces.length > 2 || first === undefined ? null : ratioOf(context, text, first, second ?? '1', path);
  if (ratio === null) {
    const advice =
      'Write primary over secondary: 5.67, 5.67 : 1, or two winding voltages under test: 12.0 V : 2.12 V. Turns stand under turns.';
    refuse(context, path, `"${text}" is no turns ratio.`, advice);
    return null;
  }
  return 'ratio' in ratio
    ? { by: 'ratio', ratio: { quantity: ratio.ratio, ...known } }
    : { by: 'winding voltages', primary: { quantity: ratio.primary, ...known }, secondary: { quantity: ratio.secondary, ...known } };
}

type Ends = { readonly low: number; readonly high: number };

type Read = { readonly ratio: Quantity<'ratio'> } | { readonly primary: Quantity<'voltage'>; readonly secondary: Quantity<'voltage'> };

function ratioOf(context: ReadingContext, text: string, first: string, second: string, path: DataPath): Read | null {
  const volts = [readQuantity(first, 'voltage'), readQuantity(second, 'voltage')] as const;
  if (volts[0].ok && volts[1].ok) {
    const [primary, secondary] = [volts[0].value, volts[1].value];
    return isAmount(primary) && isAmount(secondary) ? { primary, secondary } : null;
  }
  const numbers = [readQuantity(first, 'ratio'), readQuantity(second, 'ratio')] as const;
  if (!numbers[0].ok || !numbers[1].ok) return null;
  const [over, under] = [numbers[0].value, numbers[1].value];
  if (!isAmount(over) || !isAmount(under) || over.unit === '%' || under.unit === '%') return null;
  reportRemarks(
    context,
    [...numbers[0].remarks, ...numbers[1].remarks].map((remark) => ({ ...remark, span: { start: 0, end: text.length } })),
    path,
  );
  return { ratio: quotient(over, under, text) };
}

/** Above zero and with both ends known: a bound is no ratio. */
function isAmount<D extends Dimension>(quantity: Quantity<D>): quantity is Quantity<D> & Ends {
  return quantity.low !== null && quantity.high !== null && quantity.low > 0 && Number.isFinite(quantity.high);
}

type Amount = Quantity<'ratio'> & Ends;

/** One number over another, with the digits of the one that is not a plain 1; two whole numbers are counts and exact. */
function quotient(over: Amount, under: Amount, written: string): Quantity<'ratio'> {
  const isOne = (side: Amount): boolean => side.written === '1';
  const counted = [over, under].every((side) => /^\d+$/u.test(side.written)) && !isOne(over) && !isOne(under);
  const nominal = over.nominal / under.nominal;
  const step = (side: Amount): number => (isOne(side) || counted ? 0 : side.resolution / side.nominal);
  const digits = [over, under].filter((side) => !isOne(side)).map(({ significant }) => significant);
  return {
    ...over,
    low: over.low / under.high,
    nominal,
    high: over.high / under.low,
    significant: counted ? EXACT_DIGITS : Math.min(...digits, EXACT_DIGITS),
    resolution: nominal * (step(over) + step(under)),
    written: written.trim(),
    unit: '1',
    span: { start: 0, end: written.length },
  };
}

/** Says what was written and how to write it. */
export function refuse(context: ReadingContext, path: DataPath, message: string, advice: string): void {
  context.findings.push(readingFinding('unreadable-value', atValue(path), message, { advice }));
}
