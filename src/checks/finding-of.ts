import type { DataPath, Finding, Severity, Whereabouts } from '../diagnostics/finding.ts';
import { sourceInWords } from '../values/source-in-words.ts';
import type { Source } from '../values/value.ts';
import type { Rule } from './check.ts';

interface FindingDetails {
  readonly message: string;
  /** The rule's own where left out. */
  readonly severity?: Severity;
  readonly advice?: string;
  readonly source?: Source;
  /** What an author's answer names; several references separated by a comma. */
  readonly subject?: string;
}

/** A finding of a rule; why, what to do and source are the rule's unless the finding knows better. */
export function findingOf(rule: Rule, where: Whereabouts, details: FindingDetails): Finding {
  return {
    rule: rule.id,
    severity: details.severity ?? rule.severity,
    where,
    message: details.message,
    why: rule.why,
    advice: details.advice ?? rule.advice,
    source: sourceInWords(details.source ?? rule.source),
    ...(details.subject === undefined ? {} : { subject: details.subject }),
  };
}

/** The value at a data path. */
export function atValue(...path: DataPath): Whereabouts {
  return { in: 'data', path, part: 'value' };
}

/** The key at a data path, where what it names is meant and not one value. */
export function atKey(...path: DataPath): Whereabouts {
  return { in: 'data', path, part: 'key' };
}

/** A limit that the trade uses and no publication states. */
export function commonPractice(about: string): Source {
  return { title: 'Common practice', section: about, standing: 'common practice' };
}
