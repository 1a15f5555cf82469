import type { Finding } from '../diagnostics/finding.ts';
import { formulaOf } from '../formulas/index.ts';
import type { Value } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';
import { safetyClassesOf } from './safety-class.ts';
import { exceedsRating, judgedStresses, stressInWords } from './stress-findings.ts';

const RULE: Rule = {
  id: 'rating-exceeded',
  title: 'A part sees more than it is rated for',
  severity: 'error',
  why: 'No policy accepts a stress above the rating: the rating, the stage’s values or the design is wrong.',
  advice: 'Read the marking again and compare the values of the stage; where the design is really so, answer the finding.',
  source: commonPractice('definition of a rating'),
};

export const ratingExceeded: Check = { ...RULE, check };

/**
 * An error only where the whole interval is above the rating and every number in it was printed, marked or measured, by formulas
 * whose source was read. What was assumed, remembered, worked out by us, or taken from the data sheet of a part with that marking, warns.
 */
function check(input: CheckInput): Finding[] {
  return judgedStresses(input, null).flatMap((judged) => {
    const { part, row } = judged;
    // A capacitor across the line without X class is one fault and has its own rule.
    const unclassed = part.role === 'x-capacitor' && safetyClassesOf(part).length === 0;
    if (unclassed || row.allowance !== undefined || !exceedsRating(judged)) return [];
    const certain = isCertain(judged.ratio);
    const message = `${stressInWords(judged)}: above its rating${certain ? '' : ', if what was assumed or looked up holds'}.`;
    return [
      findingOf(RULE, atKey(...part.path), { message, severity: certain ? 'error' : 'warning', subject: part.references.join(', ') }),
    ];
  });
}

const FIRM: ReadonlySet<string> = new Set(['printed', 'marked', 'measured']);

function isCertain({ origin }: Value): boolean {
  if (origin.evidence !== 'computed') return FIRM.has(origin.evidence);
  const standing = formulaOf(origin.formula)?.source.standing;
  return (standing === 'read' || standing === 'common practice') && Object.values(origin.inputs).every(isCertain);
}
