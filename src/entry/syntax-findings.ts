import { parseDocument, type YAMLError } from 'yaml';
import type { Finding } from '../diagnostics/finding.ts';
import { readingFinding } from './reading-rules.ts';
import { swallowedBrackets, type SwallowedBracket } from './swallowed-brackets.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** Own words for faults of YAML, by the parser's code; others keep the parser's sentence. */
const IN_OWN_WORDS: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: 'A tab stands in the indentation; YAML takes spaces only.',
  BAD_INDENT: 'The indentation does not fit the lines above.',
  BLOCK_AS_IMPLICIT_KEY: 'A colon and a space begin a new key here; put the text in quotes.',
  BLOCK_IN_FLOW: 'A colon and a space, or a dash and a space, begin something new inside brackets; put the text in quotes.',
  MULTILINE_IMPLICIT_KEY: 'A key runs over several lines; a colon is missing, or a text needs quotes.',
  BAD_SCALAR_START: 'Text cannot begin with this sign; put it in quotes.',
  MISSING_CHAR: 'A closing quote, bracket, comma or colon is missing before this place.',
  UNEXPECTED_TOKEN: 'Something stands here that YAML does not expect; put text with brackets, colons or number signs in quotes.',
};

/**
 * Every fault of syntax that the collecting parser finds, one a line; where it finds none, what the fast parser said.
 * `offset` is where the YAML starts in the file.
 */
export function syntaxFindings(
  yaml: string,
  offset: number,
  refusal: { readonly message: string; readonly offset: number },
): readonly Finding[] {
  const swallowed = swallowedBrackets(yaml);
  // The faults that a swallowed bracket causes lie anywhere below it; those that remain without its number sign are others.
  const mended = swallowed.reduce((text, { start }) => `${text.slice(0, start)}_${text.slice(start + 1)}`, yaml);
  const others = firstOfEachLine(yaml, collectedErrors(mended)).map((error) => {
    const [start, end] = error.pos;
    const place = { in: 'text', start: offset + start, end: offset + Math.max(start + 1, Math.min(end, yaml.length)) } as const;
    if (error.code === 'DUPLICATE_KEY') return duplicateKey(yaml, start, offset);
    return readingFinding('yaml-syntax', place, IN_OWN_WORDS[error.code] ?? sentence(error.message));
  });
  const findings = [...swallowed.map((each) => ofSwallowed(each, offset)), ...others];
  if (findings.length > 0) return findings;
  const start = offset + Math.min(refusal.offset, yaml.length);
  return [readingFinding('yaml-syntax', { in: 'text', start, end: start + 1 }, sentence(refusal.message))];
}

function collectedErrors(yaml: string): readonly YAMLError[] {
  try {
    return parseDocument(yaml, { prettyErrors: false, version: '1.2', schema: 'core' }).errors;
  } catch {
    // Nesting beyond the stack: the fast parser's own refusal is reported instead.
    return [];
  }
}

function ofSwallowed({ start, end, bracket }: SwallowedBracket, offset: number): Finding {
  const message = `The number sign begins a comment here, and the ${bracket} behind it is not read; put the value in quotes.`;
  return readingFinding('yaml-syntax', { in: 'text', start: offset + start, end: offset + end }, message);
}

function duplicateKey(yaml: string, start: number, offset: number): Finding {
  const key = /^(?:"[^"]*"|'[^']*'|[^:\r\n]*)/u.exec(yaml.slice(start))?.[0].trim() ?? '';
  const place = { in: 'text', start: offset + start, end: offset + start + Math.max(1, key.length) } as const;
  return readingFinding('duplicate-key', place, `The key ${key} stands twice in this group.`);
}

/** A fault drags others behind it on the same line; the first says what to correct. */
function firstOfEachLine(yaml: string, errors: readonly YAMLError[]): readonly YAMLError[] {
  const lines = new Set<number>();
  return errors.filter((error) => {
    const line = yaml.slice(0, error.pos[0]).split('\n').length;
    if (lines.has(line)) return false;
    lines.add(line);
    return true;
  });
}

function sentence(message: string): string {
  const first = message.split('\n')[0]?.trim() ?? message;
  const capital = sentenceCase(first);
  return capital.endsWith('.') ? capital : `${capital}.`;
}
