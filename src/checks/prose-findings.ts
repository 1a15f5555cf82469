import type { Finding } from '../diagnostics/finding.ts';
import type { CheckInput, Rule } from './check.ts';
import { findingOf } from './finding-of.ts';
import { sentencesOf, type Sentence } from './sentences-of.ts';

/**
 * A finding at each place where `find` says so; it gives offsets inside the sentence and the message.
 */
export function proseFindings(
  rule: Rule,
  { text, textStart }: CheckInput,
  find: (sentence: Sentence) => readonly { readonly start: number; readonly end: number; readonly message: string }[],
): Finding[] {
  return sentencesOf(text).flatMap((sentence) =>
    find(sentence).map(({ start, end, message }) => {
      const from = textStart + sentence.start;
      return findingOf(rule, { in: 'text', start: from + start, end: from + end }, { message, subject: 'text' });
    }),
  );
}

/** Places where a pattern matches in a sentence, with one message for all. */
export function placesOf(
  sentence: string,
  pattern: RegExp,
  message: (found: string) => string,
): { start: number; end: number; message: string }[] {
  return [...sentence.matchAll(pattern)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
    message: message(match[0]),
  }));
}
