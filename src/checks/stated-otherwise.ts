import type { DataPath, Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'stated-otherwise',
  title: 'A document states another value too',
  severity: 'note',
  why: 'The page computes with one of the two; readers should know that there is another.',
  advice: 'Nothing, where the choice is right; say in the text why it was made.',
  source: commonPractice('documents contradict themselves'),
};

export const statedOtherwise: Check = { ...RULE, check };

interface Stated {
  readonly name: string;
  readonly path: DataPath;
  readonly others: readonly string[];
}

function check({ entry }: CheckInput): Finding[] {
  const stated: Stated[] = [
    { name: 'size', path: ['body'], others: entry.body.alsoStated },
    ...entry.stages.map(({ id, path, alsoStated }) => ({ name: id, path, others: alsoStated })),
    ...entry.parts.map(({ references, path, alsoStated }) => ({ name: references.join(', '), path, others: alsoStated })),
    ...entry.insulation.map(({ id, path, alsoStated }) => ({ name: id, path, others: alsoStated })),
  ];
  return stated.flatMap(({ name, path, others }) =>
    others.length === 0
      ? []
      : [findingOf(RULE, atValue(...path, 'also stated'), { message: `${name}: also stated as ${others.join('; ')}.`, subject: name })],
  );
}
