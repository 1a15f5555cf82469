import { exampleLines, type ExampleLine } from './example-lines.ts';

/** Text of every example entry, by its file name; Vite reads them when the site is built. */
const TEXTS: Readonly<Record<string, string>> = import.meta.glob<string>('../../checks/examples/*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Lines of the example entry of a rule, the reported ones marked; null for a rule that has none. */
export function ruleExample(rule: string): readonly ExampleLine[] | null {
  const text = TEXTS[`../../checks/examples/${rule}.md`];
  return text === undefined ? null : exampleLines(text, rule);
}
