import { isAlias, isCollection, isMap, LineCounter, parseDocument, visit, type Document, type YAMLMap } from 'yaml';

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
  /** Null where the text is no YAML, uses what entries may not use either, or is something else than fields and values. */
  readonly map: YAMLMap | null;
  readonly faults: readonly YamlFault[];
  readonly placeOf: (offset: number) => YamlPlace;
}

/** Opens the text of a file that holds one map. Never throws. */
export function openYaml(text: string, { file, schema, holds }: YamlReading): OpenedYaml {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, schema, merge: false });
  const placeOf = (offset: number): YamlPlace => {
    const { line, col } = lines.linePos(offset);
    return { line, column: col };
  };
  const shut = (faults: readonly YamlFault[]): OpenedYaml => ({ document, map: null, faults, placeOf });
  const errors = document.errors.map(({ pos, message }) => ({
    message: `${file} is not valid YAML: ${parserWords(message)}`,
    ...placeOf(pos[0]),
  }));
  if (errors.length > 0) return shut(errors);
  const refused = refusedFeatures(document).map(({ offset, what }) => ({
    message: `${file} ${what}`,
    ...placeOf(offset),
  }));
  if (refused.length > 0) return shut(refused);
  if (!isMap(document.contents)) return shut([{ message: `${file} must hold ${holds}`, ...placeOf(0) }]);
  return { document, map: document.contents, faults: [], placeOf };
}

/**
 * Aliases and tags: one lets a line change another far away or swell the file without bound, the other asks for a type of its own. And keys
 * that are no names.
 */
function refusedFeatures(document: Document): readonly { readonly offset: number; readonly what: string }[] {
  const found: { readonly offset: number; readonly what: string }[] = [];
  visit(document, {
    Node(_, node) {
      const what = isAlias(node) ? `the alias *${node.source}` : node.tag === undefined ? null : `the tag ${node.tag}`;
      if (what !== null) found.push({ offset: node.range?.[0] ?? 0, what: `uses ${what} of YAML; write the value out` });
    },
    Pair(_, { key }) {
      if (isCollection(key)) found.push({ offset: key.range?.[0] ?? 0, what: 'has a group where the name of a field belongs' });
    },
  });
  return found;
}

/** First line of the parser's words, without the place at their end, which is that of the finding. */
function parserWords(message: string): string {
  // The parser follows nesting as far as the stack reaches.
  if (message.startsWith('Maximum call stack')) return 'it is nested too deeply';
  return (message.split('\n', 1)[0] ?? '').replace(/ at line \d+, column \d+:?$/, '');
}
