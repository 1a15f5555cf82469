import type { Finding } from '../diagnostics/finding.ts';
import type { Part } from '../entry/entry.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'marked-against-measured',
  title: 'A part measures far from what is marked on it',
  severity: 'warning',
  why: 'A re-sleeved or counterfeit part, an aged one, or a slip of the meter’s range.',
  advice: 'Measure again out of circuit; where it stays so, say so in the text and answer the finding.',
  source: commonPractice(
    'tolerance of the marking, 20 % where none is marked; a marked 6800 µF can that held 2200 µF is reported publicly',
  ),
};

export const markedAgainstMeasured: Check = { ...RULE, check };

const USUAL_TOLERANCE = 0.2;

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) => (part.measured?.quantities ?? []).flatMap((measured) => judged(part, measured)));
}

function judged(part: Part, measured: Quantity): Finding[] {
  const marked = part.rating?.quantities.find((quantity) => quantity.dimension === measured.dimension);
  // A rated voltage or current is a limit and not a value that a meter would find.
  const isValue = ['capacitance', 'resistance', 'inductance'].includes(measured.dimension);
  if (marked === undefined || !isValue || !(marked.nominal > 0)) return [];
  const tolerance = Math.max(((marked.high ?? marked.nominal) - marked.nominal) / marked.nominal, 0) || USUAL_TOLERANCE;
  const deviation = measured.nominal / marked.nominal - 1;
  if (Math.abs(deviation) <= tolerance) return [];
  const sign = deviation > 0 ? '+' : '';
  const message = `${part.references.join(', ')}: marked ${marked.written}, measured ${measured.written}, ${sign}${rounded(deviation * 100)} %, outside ${rounded(tolerance * 100)} % tolerance.`;
  return [findingOf(RULE, atValue(...part.path, 'measured'), { message, subject: part.references.join(', ') })];
}
