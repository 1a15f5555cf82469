import { RULES } from '../checks/rules.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { ReadingRemark } from '../units/quantity.ts';
import type { OfferRemark } from '../usb-pd/judgement/judgement.ts';
import type { OfferList, ReadOffer } from '../usb-pd/offer-list.ts';
import { sourceInWords } from '../values/source-in-words.ts';

/** What stands for a file's name beside a place on the command line. */
export const OFFERS_PLACE = 'offers';

/** Everything that is said of offers given on the command line, each at its column of the one line. */
export function offerDiagnostics(text: string, { offers, remarks }: OfferList, judged: readonly OfferRemark[]): readonly Diagnostic[] {
  const extents = extentsOf(text, offers);
  return [...remarks.map(diagnosticOfReading), ...judged.map((remark) => diagnosticOfRule(remark, text, extents))];
}

function diagnosticOfReading({ severity, message, suggestion, span }: ReadingRemark): Diagnostic {
  const advice = suggestion === null ? null : `Did you mean "${suggestion}"?`;
  return {
    ...placed(span.start, span.end),
    severity,
    rule: severity === 'error' ? 'unreadable-value' : 'value-remark',
    message,
    advice,
    why: null,
    source: null,
  };
}

/** A stretch of the text: first sign, and the first one behind it. */
type Extent = readonly [start: number, end: number];

/** Where each offer stands in the text, in the order written, so that twins are two places; null where it is not found. */
function extentsOf(text: string, read: readonly ReadOffer[]): readonly (Extent | null)[] {
  let from = 0;
  return read.map(({ written }) => {
    const start = text.indexOf(written, from);
    if (start === -1) return null;
    from = start + written.length;
    return [start, from];
  });
}

/** At the offer that it is about; at the whole text where it is about all of them. */
function diagnosticOfRule(
  { rule, severity, message, source, at }: OfferRemark,
  text: string,
  extents: readonly (Extent | null)[],
): Diagnostic {
  const [start, end] = (typeof at === 'number' ? extents[at] : null) ?? [0, text.length];
  const declared = RULES.find((each) => each.id === rule);
  return { ...placed(start, end), severity, rule, message, why: declared?.why ?? null, advice: null, source: sourceInWords(source) };
}

function placed(start: number, end: number): Omit<Diagnostic, 'severity' | 'rule' | 'message' | 'why' | 'advice' | 'source'> {
  return { file: OFFERS_PLACE, line: 1, column: start + 1, endLine: 1, endColumn: end + 1, subject: null, answer: null };
}
