import type { Finding } from '../diagnostics/finding.ts';
import { PROSE_RULES, type ProseRuleId } from './prose-rule.ts';
import { sourceInWords } from '../values/source-in-words.ts';

/** A stretch of the Markdown text, in offsets of that text. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What can carry a position; the shape that both syntax trees share. */
interface Placed {
  // The parser of HTML leaves out an end that it cannot tell, whatever its types say.
  readonly position?: { readonly start?: Point | undefined; readonly end?: Point | undefined } | undefined;
}

interface Point {
  readonly offset?: number | undefined;
}

/** Offsets of a node in the Markdown text; the start of the text for a node that was not written by the author. */
export function stretchOf(node: Placed): Stretch {
  const start = node.position?.start?.offset ?? 0;
  return { start, end: node.position?.end?.offset ?? start };
}

/** A finding in the text; `startOffset` is where the text starts in its file. */
export function proseFinding(rule: ProseRuleId, stretch: Stretch, startOffset: number, message: string, advice?: string): Finding {
  const declared = PROSE_RULES.find((each) => each.id === rule);
  return {
    rule,
    severity: declared?.severity ?? 'warning',
    where: { in: 'text', start: startOffset + stretch.start, end: startOffset + stretch.end },
    message,
    ...(declared === undefined ? {} : { why: declared.why, advice: advice ?? declared.advice, source: sourceInWords(declared.source) }),
  };
}
