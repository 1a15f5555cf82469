import type { EntryEvidence } from './entry.ts';

const EVIDENCE_WORD = /[\s,(]+(?<word>printed|marked|measured|datasheet|assumed)\)?\s*$/iu;

const BY_WORD: Readonly<Record<string, EntryEvidence>> = {
  printed: 'printed',
  marked: 'marked',
  measured: 'measured',
  datasheet: 'datasheet',
  assumed: 'assumed',
};

/** A value and its evidence, which stands as its last word: "392 V measured". Offsets of what is left stay as they were. */
export function splitEvidence(text: string): { readonly text: string; readonly evidence: EntryEvidence | null } {
  const match = EVIDENCE_WORD.exec(text);
  const evidence = BY_WORD[match?.groups?.['word']?.toLowerCase() ?? ''];
  if (match === null || evidence === undefined) return { text, evidence: null };
  return { text: text.slice(0, match.index), evidence };
}
