import type { DataPath } from '../diagnostics/finding.ts';
import type { Rating } from '../units/quantity.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/**
 * Reports a word among the figures of an efficiency point: "fell to 17 W" would else be read as 17 W that went in.
 *
 * @param shift Where the piece begins in the text of its field.
 */
export function reportWords(context: ReadingContext, rating: Rating | null, path: DataPath, shift = 0): void {
  const [first] = rating?.marks ?? [];
  if (first === undefined) return;
  const advice =
    'Write figures alone: 20.03 V 0.9 A 25.4 W; a load that the device did not hold is "not sustained"; remarks go under note.';
  const span = { start: shift + first.span.start, end: shift + first.span.end };
  context.findings.push(readingFinding('unreadable-value', atValue(path, span), `"${first.text}" is no figure of a point.`, { advice }));
}
