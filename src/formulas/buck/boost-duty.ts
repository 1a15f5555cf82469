import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Duty of the lower switch of a boost in continuous conduction. */
export const boostDuty = defineFormula({
  id: 'boost-duty',
  title: 'Duty of a boost',
  subject: 'buck',
  meaning: 'Duty of the lower switch of a boost in continuous conduction.',
  expression: 'D = 1 - \\frac{V_{i}}{V_{o}}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'duty of the lower switch', unit: '1' },
  inputs: {
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
  },
  compute({ input, output }) {
    return output >= input ? 1 - input / output : Number.NaN;
  },
  validity: ['The output must lie above the input.'],
  source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 23'),
  examples: [{ source: workedWith('bc: 5 V to 12 V'), inputs: { input: '5 V', output: '12 V' }, printed: '0.58333', kind: 'independent' }],
});
