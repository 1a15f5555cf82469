import type { Finding } from '../diagnostics/finding.ts';
import type { Answer } from './entry.ts';

/** The author's answer to a finding among several: same rule, and same subject where it names one; an answer that names the subject wins over one that names the rule alone. */
export function answerAmong(answers: readonly Answer[], finding: Finding): Answer | null {
  const ofRule = answers.filter((answer) => answer.to === finding.rule);
  const named = ofRule.find((answer) => answer.at !== null && namesSubject(answer.at, finding.subject));
  return named ?? ofRule.find((answer) => answer.at === null) ?? null;
}

/** "C21" answers for the subject "C21" and for "C21, C22"; spaces and case of words do not matter. */
function namesSubject(at: string, subject: string | undefined): boolean {
  if (subject === undefined) return false;
  const wanted = pieces(at);
  const given = pieces(subject);
  return wanted.join() === given.join() || (wanted.length === 1 && given.includes(wanted[0] ?? ''));
}

function pieces(subject: string): readonly string[] {
  return subject.split(',').map((piece) => piece.replace(/\s+/gu, ' ').trim().toLowerCase());
}
