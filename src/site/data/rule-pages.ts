import type { RuleDeclaration } from '../../diagnostics/rule-declaration.ts';
import { CHECKS } from '../../checks/index.ts';
import { READING_RULES } from '../../entry/reading-rules.ts';
import { LOG_RULES } from '../../logs/log-rule.ts';
import { PROSE_RULES } from '../../markdown/prose-rule.ts';
import { PIPELINE_RULES } from '../../pipeline/pipeline-rule.ts';
import { withUnitsKept } from '../../units/with-units-kept.ts';
import type { Source, Standing } from '../../values/value.ts';

/** A rule as its page shows it. */
export interface RulePage extends RuleDeclaration<string> {
  /** Standing of the source; null where the rule names it in words only. */
  readonly standing: Standing | null;
  readonly url: string | null;
}

/** Rules that look at the same thing. */
export interface RuleGroup {
  readonly title: string;
  readonly about: string;
  readonly rules: readonly RulePage[];
}

type SourcedRule = RuleDeclaration<Source>;

/** All rules by what they look at, in the order in which an entry meets them. */
export function ruleGroups(): readonly RuleGroup[] {
  return [
    {
      title: 'Reading an entry',
      about: 'The file, its YAML, its shape and its texts.',
      rules: READING_RULES.map((rule) => ({ ...plain(rule), source: rule.source, standing: null, url: null })),
    },
    {
      title: 'What the data say',
      about: 'Numbers against each other, against physics and against published limits.',
      rules: CHECKS.map(withSource),
    },
    {
      title: 'Logs',
      about: 'The files of testers that lie beside an entry.',
      rules: LOG_RULES.map((rule) => ({ ...plain(rule), source: rule.source, standing: null, url: null })),
    },
    { title: 'The text', about: 'Links, directives and pictures in the prose.', rules: PROSE_RULES.map(withSource) },
    { title: 'Files and addresses', about: 'The content folder as a whole.', rules: PIPELINE_RULES.map(withSource) },
  ];
}

function withSource(rule: SourcedRule): RulePage {
  return {
    ...plain(rule),
    source: withUnitsKept([rule.source.title, rule.source.section].filter((words) => words !== '').join(', ')),
    standing: rule.source.standing,
    url: rule.source.url ?? null,
  };
}

function plain({
  id,
  title,
  severity,
  why,
  advice,
}: Omit<RulePage, 'source' | 'standing' | 'url'>): Omit<RulePage, 'source' | 'standing' | 'url'> {
  return { id, title: withUnitsKept(title), severity, why: withUnitsKept(why), advice: withUnitsKept(advice) };
}
