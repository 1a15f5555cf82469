import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Duty of the upper switch of a buck in continuous conduction. */
export const buckDuty = defineFormula({
  id: 'buck-duty',
  title: 'Duty of a buck',
  subject: 'buck',
  meaning: 'Duty of the upper switch of a buck in continuous conduction.',
  expression: 'D = \\frac{V_{o}}{V_{i}}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'duty of the upper switch', unit: '1' },
  inputs: {
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
  },
  compute({ output, input }) {
    return input >= output ? output / input : Number.NaN;
  },
  validity: ['The input must lie above the output.'],
  source: cite(PUBLICATIONS.stBuckBoost, '1.4.3'),
  examples: [
    { source: workedWith('bc: 3.3 V from 12 V'), inputs: { output: '3.3 V', input: '12 V' }, printed: '0.2750', kind: 'independent' },
  ],
});
