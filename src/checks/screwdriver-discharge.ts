import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { findingOf } from './finding-of.ts';
import { sentencesIn } from './prose-findings.ts';
import { isWarningAgainst } from './sentences-of.ts';

const RULE: Rule = {
  id: 'screwdriver-discharge',
  title: 'The text shorts a capacitor with a screwdriver',
  severity: 'warning',
  why: 'A charged bulk capacitor throws sparks and molten metal when shorted, and readers copy what they read.',
  advice: 'Describe a resistor with insulated leads, and a meter afterwards; or warn against the screwdriver in the same sentence.',
  source: {
    title: 'Restarters wiki, How to safely discharge capacitors',
    section: 'resistor with insulated leads, then a meter',
    standing: 'read',
  },
};

export const screwdriverDischarge: Check = { ...RULE, check };

function check(input: CheckInput): Finding[] {
  return sentencesIn(input).flatMap((sentence) => {
    const tool = /\bscrewdriver\b/i.exec(sentence.text);
    if (tool === null || !/\b(?:short|shorts|shorted|shorting|discharg\w*|bridg(?:e|ed|ing))\b/i.test(sentence.text)) return [];
    if (isWarningAgainst(sentence.text)) return [];
    const start = input.textStart + sentence.start + tool.index;
    return [
      findingOf(
        RULE,
        { in: 'text', start, end: start + tool[0].length },
        { message: 'A screwdriver is named for shorting or discharging.', subject: 'text' },
      ),
    ];
  });
}
