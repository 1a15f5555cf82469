import type { Finding } from '../diagnostics/finding.ts';
import { FITTINGS, type Line } from './part-line.ts';
import { type PartReference, readReferences } from './part-references.ts';
import type { ReadingContext } from './reading-context.ts';
import { atKey, readingFinding } from './reading-rules.ts';

/** Reports references that stand at two parts; an absent part has none. */
export function reportDuplicates(context: ReadingContext, lines: readonly Line[]): void {
  const seen = new Map<string, Line>();
  for (const line of lines) {
    if (typeof line.value === 'string' && FITTINGS[line.value.trim()] !== undefined) continue;
    for (const each of readReferences(line.key)) {
      const earlier = seen.get(each.reference);
      if (earlier === undefined) seen.set(each.reference, line);
      else context.findings.push(duplicate(line, earlier, each));
    }
  }
}

function duplicate(line: Line, earlier: Line, { reference, span }: PartReference): Finding {
  const where = earlier === line ? 'in the same key' : `under ${earlier.stage}`;
  return readingFinding('duplicate-reference', atKey(line.path, span), `${reference} stands here and ${where}.`, { subject: reference });
}
