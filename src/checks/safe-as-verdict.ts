import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { placesOf, proseFindings } from './prose-findings.ts';

const RULE: Rule = {
  id: 'safe-as-verdict',
  title: '“Safe” stands as a verdict',
  severity: 'warning',
  why: 'A look inside is not a safety test: official tests use kilovolts and calibrated gear, and most failures are invisible.',
  advice: 'Say what was looked at, what was found and what was not looked at.',
  source: {
    title: 'Trading Standards news, 2 December 2016',
    section: '397 of 400 imitation chargers failed a basic test',
    standing: 'read',
  },
};

export const safeAsVerdict: Check = { ...RULE, check };

const VERDICT =
  /\b(?:(?:is|are|it['’]s|looks?|seems?|feels?|proved|proves|remains?|perfectly|completely|absolutely|totally|very|100 ?%)\s+safe\b(?!\s+(?:to say|voltage))|safe to (?:use|own|buy|plug|leave|run)|passes? (?:all )?safety)/gi;

function check(input: CheckInput): Finding[] {
  const message = (found: string): string => `“${found}” reads as a safety verdict.`;
  const inText = proseFindings(RULE, input, (sentence) =>
    sentence.text.endsWith('?') || !/safe/i.test(sentence.text) ? [] : placesOf(sentence.text, VERDICT, message),
  );
  const { title, summary } = input.entry;
  const inFields = [['title', title] as const, ['summary', summary ?? ''] as const].flatMap(([field, words]) =>
    placesOf(words, VERDICT, message).map((place) => findingOf(RULE, atValue(field), { message: place.message, subject: field })),
  );
  return [...inFields, ...inText];
}
