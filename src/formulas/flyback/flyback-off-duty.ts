import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Share of the period in which the secondary of a flyback in continuous conduction carries current. */
export const flybackOffDuty = defineFormula({
  id: 'flyback-off-duty',
  title: 'Off-time share of a flyback',
  subject: 'flyback',
  meaning: 'Share of the period in which the secondary of a flyback in continuous conduction carries current.',
  expression: 'D_{s} = \\frac{V_{\\mathrm{in}}}{V_{\\mathrm{in}} + V_{R}}',
  output: { tex: 'D_{s}', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
  inputs: {
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ reflected, input }) {
    return input / (input + reflected);
  },
  validity: ['Continuous conduction or its boundary.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13'),
      inputs: { reflected: '28 V', input: '24 V' },
      printed: '0.462',
      kind: 'published',
    },
  ],
});
