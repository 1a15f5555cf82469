import { isMap, LineCounter, parseDocument, type Document, type YAMLMap } from 'yaml';

/** Line and column of a file, from 1. */
export interface YamlPlace {
  readonly line: number;
  readonly column: number;
}

/** What is wrong at a place of a file of YAML. */
export interface YamlFault extends YamlPlace {
  readonly message: string;
}

/** How a file of YAML is read. */
export interface YamlReading {
  /** Name of the file in what is said of it. */
  readonly file: string;
  /** `failsafe` keeps every value as the text that was written; `core` reads numbers. */
  readonly schema: 'failsafe' | 'core';
  /** What it holds, as the end of "bench.yaml must hold …". */
  readonly holds: string;
}

/** A file of YAML that was opened: its map of fields, or the faults that kept it shut. */
export interface OpenedYaml {
  readonly document: Document;
  /** Null where the text is no YAML, or something else than fields and values. */
  readonly map: YAMLMap | null;
  readonly faults: readonly YamlFault[];
  readonly placeOf: (offset: number) => YamlPlace;
}

/** Opens the text of a file that holds one map. */
export function openYaml(text: string, { file, schema, holds }: YamlReading): OpenedYaml {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, schema, merge: false });
  const placeOf = (offset: number): YamlPlace => {
    const { line, col } = lines.linePos(offset);
    return { line, column: col };
  };
  const errors = document.errors.map(({ pos, message }) => ({
    message: `${file} is not valid YAML: ${withoutPlace(message)}`,
    ...placeOf(pos[0]),
  }));
  if (errors.length > 0) return { document, map: null, faults: errors, placeOf };
  if (!isMap(document.contents))
    return { document, map: null, faults: [{ message: `${file} must hold ${holds}`, ...placeOf(0) }], placeOf };
  return { document, map: document.contents, faults: [], placeOf };
}

/** First line of the parser's words; the place at their end is that of the finding. */
function withoutPlace(message: string): string {
  return (message.split('\n', 1)[0] ?? '').replace(/ at line \d+, column \d+:?$/, '');
}
