import type { Finding } from '../diagnostics/finding.ts';
import type { Part } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { bridgesTheBarrier, ratedParts, safetyClassesOf } from './safety-class.ts';

const RULE: Rule = {
  id: 'barrier-capacitor-class',
  title: 'A capacitor across the barrier has no Y class',
  severity: 'error',
  why: 'If this capacitor shorts, the output is at mains potential; only Y classes are made so that it does not.',
  advice: 'Read the marking again. If it really carries no Y class, answer the finding: it is then a result of the review.',
  source: {
    title: 'IEEE product-safety mailing list archive',
    section: 'one Y1, or two Y2 in series, between mains and accessible output',
    standing: 'secondary',
  },
};

export const barrierCapacitorClass: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return ratedParts(entry, 'y-capacitor').flatMap((part) => judged(part, bridgesTheBarrier(part, entry)));
}

function judged(part: Part, bridges: boolean): Finding[] {
  const classes = safetyClassesOf(part);
  const name = `${part.references.join(', ')} (${part.rating?.written ?? ''})`;
  const finding = (message: string, severity: Finding['severity']): Finding[] => [
    findingOf(RULE, atKey(...part.path), { message, severity, subject: part.references.join(', ') }),
  ];
  if (classes.includes('Y1')) return [];
  if (!classes.some((name) => name.startsWith('Y'))) {
    return finding(
      classes.length === 0 ? `${name} has no Y class.` : `${name} is class ${classes.join(', ')}, which is for across the line only.`,
      'error',
    );
  }
  if (!bridges) return [];
  if (classes.includes('Y2') && part.arrangement === 'series') {
    return finding(`${name}: two Y2 in series stand in for one Y1; both must hold.`, 'note');
  }
  return finding(
    `${name} is a single ${classes.filter((name) => name.startsWith('Y')).join(', ')}, which covers basic insulation only.`,
    'warning',
  );
}
