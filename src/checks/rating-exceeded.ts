import type { Finding } from '../diagnostics/finding.ts';
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

/** Certain only where the whole interval is above the rating and nothing in it was assumed or remembered. */
function check(input: CheckInput): Finding[] {
  return judgedStresses(input, null).flatMap((judged) => {
    const { part } = judged;
    // A capacitor across the line without X class is one fault and has its own rule.
    const unclassed = part.role === 'x-capacitor' && safetyClassesOf(part).length === 0;
    if (unclassed || !exceedsRating(judged)) return [];
    const certain = !restsOnAssumption(judged.ratio);
    const message = `${stressInWords(judged)}: above its rating${certain ? '' : ', if what was assumed holds'}.`;
    return [
      findingOf(RULE, atKey(...part.path), { message, severity: certain ? 'error' : 'warning', subject: part.references.join(', ') }),
    ];
  });
}

function restsOnAssumption({ origin }: Value): boolean {
  if (origin.evidence === 'assumed') return true;
  return origin.evidence === 'computed' && Object.values(origin.inputs).some(restsOnAssumption);
}
