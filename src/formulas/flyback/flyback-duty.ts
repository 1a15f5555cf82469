import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Duty in continuous conduction, also of an active-clamp flyback. */
export const flybackDuty = defineFormula({
  id: 'flyback-duty',
  title: 'Duty of a flyback',
  subject: 'flyback',
  meaning: 'Duty in continuous conduction, also of an active-clamp flyback.',
  expression: 'D = \\frac{V_{R}}{V_{\\mathrm{in}} + V_{R}}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
  inputs: {
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ reflected, input }) {
    return reflected / (input + reflected);
  },
  validity: ['Continuous conduction or its boundary.'],
  remarks: ['TIDA-01622 prints 0.67 for its active clamp without the bulk voltage it belongs to; UCC28780, eq. 22, is this relation.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 16'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 16: ten times 12.6 V'),
      inputs: { reflected: '126 V', input: '75 V' },
      printed: '0.627',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13: five times 5.6 V'),
      inputs: { reflected: '28 V', input: '24 V' },
      printed: '0.538',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-16: four times 5.6 V'),
      inputs: { reflected: '22.4 V', input: '24 V' },
      printed: '0.483',
      kind: 'published',
    },
  ],
});
