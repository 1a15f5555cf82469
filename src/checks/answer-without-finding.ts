import type { Finding } from '../diagnostics/finding.ts';
import { answerAmong } from '../entry/answer-for.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'answer-without-finding',
  title: 'An answer to a finding that is not there',
  severity: 'warning',
  why: 'It is not published, and it would silence the finding without notice when it comes back.',
  advice: 'Take the answer out, or correct the part or field that it names.',
  source: commonPractice('answers are read beside their finding'),
};

/** The rule that looks after answers; it needs the rules that are answered. Answers to rules of the readers are not judged. */
export function answerWithoutFinding(checks: readonly Check[]): Check {
  return { ...RULE, check: (input) => idleAnswers(input, checks) };
}

function idleAnswers(input: CheckInput, checks: readonly Check[]): Finding[] {
  const { answers } = input.entry;
  return answers.flatMap((answer) => {
    const rule = checks.find((candidate) => candidate.id === answer.to);
    if (rule === undefined || rule.check(input).some((finding) => answerAmong(answers, finding) === answer)) return [];
    const about = answer.at === null ? '' : ` about ${answer.at}`;
    const message = `There is no finding of ${answer.to}${about} to answer.`;
    return [findingOf(RULE, atKey(...answer.path), { message, subject: answer.to })];
  });
}
