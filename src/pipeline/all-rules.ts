import { RULES, type RuleDescription } from '../checks/rules.ts';
import { LOG_RULES } from '../logs/log-rule.ts';
import { PROSE_RULES } from '../markdown/prose-rule.ts';
import { sourceInWords } from '../values/source-in-words.ts';
import { PIPELINE_RULES } from './pipeline-rule.ts';
import { byText } from './text-order.ts';

/** Every rule that this program reports, by id: those on the data, on the Markdown text, and on files and folders. */
export function allRules(): RuleDescription[] {
  const aroundEntries = [...PROSE_RULES, ...PIPELINE_RULES].map((rule) => ({ ...rule, source: sourceInWords(rule.source), example: null }));
  const ofLogs = LOG_RULES.map((rule) => ({ ...rule, example: null }));
  return [...RULES, ...ofLogs, ...aroundEntries].sort((one, other) => byText(one.id, other.id));
}
