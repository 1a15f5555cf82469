import type { Finding } from '../diagnostics/finding.ts';
import type { CheckInput, Rule } from './check.ts';
import { findingOf } from './finding-of.ts';
import { sentencesOf, type Sentence } from './sentences-of.ts';

/**
 * A finding at each place where `find` says so; it gives offsets inside the sentence and the message.
 */
export function proseFindings(
  rule: Rule,
  input: CheckInput,
  find: (sentence: Sentence) => readonly { readonly start: number; readonly end: number; readonly message: string }[],
): Finding[] {
  return sentencesIn(input).flatMap((sentence) =>
    find(sentence).map(({ start, end, message }) => {
      const from = input.textStart + sentence.start;
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

/** Sentences by input: several rules read the same text. */
const READ = new WeakMap<CheckInput, readonly Sentence[]>();

/** The sentences of an input's text, split once. */
export function sentencesIn(input: CheckInput): readonly Sentence[] {
  const known = READ.get(input);
  if (known !== undefined) return known;
  const sentences = sentencesOf(input.text);
  READ.set(input, sentences);
  return sentences;
}
