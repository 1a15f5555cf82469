import type { Entry } from '../../src/entry/entry.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { placeFindings } from '../../src/entry/place-findings.ts';
import { readEntry } from '../../src/entry/read-entry.ts';

/** Data that every entry needs, so that a test can write only what it is about. */
const HEAD = 'title: One\ndevice: { maker: Larkmoor, model: LM-Q100, kind: wall charger }\n';

/** Lines that stand above the YAML of a test in its file. */
export const LINES_ABOVE = 3;

export interface ReadTest {
  readonly entry: Entry;
  /** "rule line:column message", lines counted in the YAML of the test. */
  readonly findings: readonly string[];
  /** "rule line:column" */
  readonly places: readonly string[];
}

/** Reads an entry that holds the head and the YAML of a test. */
export function reading(yaml: string): ReadTest {
  const text = `---\n${HEAD}${yaml}\n---\n`;
  const { entry, diagnostics } = readFile(text);
  if (entry === null) throw new Error('nothing could be read');
  const places = diagnostics.map((each) => `${each.rule} ${each.line - LINES_ABOVE}:${each.column}`);
  return { entry, places, findings: diagnostics.map((each, index) => `${places[index] ?? ''} ${each.message}`) };
}

/** Reads a whole file. */
export function readFile(text: string): { readonly entry: Entry | null; readonly diagnostics: ReturnType<typeof placeFindings> } {
  const parsed = parseFrontmatter(text);
  const read =
    parsed.data === undefined
      ? { entry: null, findings: [] }
      : readEntry({ slug: 'one', file: 'teardowns/one/index.md', frontmatter: parsed.data });
  return {
    entry: read.entry,
    diagnostics: placeFindings({ file: 'teardowns/one/index.md', text }, [...parsed.findings, ...read.findings], read.entry?.answers ?? []),
  };
}
