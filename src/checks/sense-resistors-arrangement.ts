import { senseArrangement, senseResistorsOf } from '../derived/sense-limits.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'sense-resistors-arrangement',
  title: 'Several sense resistors, and nobody says how they belong together',
  severity: 'note',
  why: 'Two in parallel trip at twice the current of one, and one for each phase or port each at its own: without a word the current limit is withheld.',
  advice:
    'Say arrangement: parallel, series, or separate where each stands for itself; a note "output side" takes one at the output out of the sum.',
  source: commonPractice('sense resistors are put side by side to share the loss, or one into each phase'),
};

export const senseResistorsArrangement: Check = { ...RULE, check };

/** Only where a limit would follow, which is then among the operating figures as withheld. */
function check({ entry, derived }: CheckInput): Finding[] {
  return entry.stages.flatMap((stage) => {
    const parts = senseResistorsOf(entry, stage);
    const [first] = parts;
    const withheld = derived.operating.some(
      ({ stage: id, name, value }) => id === stage.id && name.startsWith('current limit') && isMissing(value),
    );
    if (first === undefined || !withheld || senseArrangement(parts) !== null) return [];
    const names = parts.flatMap(({ references }) => references);
    const message = `${names.join(', ')} sense a current in ${stage.id}; whether they stand in parallel, in series or separately is not said, so its current limit is withheld.`;
    return [findingOf(RULE, atKey(...first.path), { message, subject: names.join(', ') })];
  });
}
