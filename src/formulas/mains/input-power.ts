import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Power that a supply draws for the power it delivers. */
export const inputPower = defineFormula({
  id: 'input-power',
  title: 'Input power',
  subject: 'mains',
  meaning: 'Power that a supply draws for the power it delivers.',
  expression: 'P_{\\mathrm{in}} = \\frac{P_{o}}{\\eta}',
  output: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn', unit: 'W' },
  inputs: {
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'output power', unit: 'W' },
    efficiency: { tex: '\\eta', dimension: 'ratio', meaning: 'efficiency', unit: '%' },
  },
  compute({ power, efficiency }) {
    return power / efficiency;
  },
  validity: ['The efficiency must be above zero and at the same load and line.'],
  remarks: ['Some design guides take the efficiency as 1 and so find currents 5 to 10 % lower.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 1'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'appendix step 1, p. 13'),
      inputs: { power: '46.9 W', efficiency: '0.7' },
      printed: '67 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 11, p. 8, step 1'),
      inputs: { power: '192 W', efficiency: '0.92' },
      printed: '209 W',
      kind: 'published',
    },
  ],
});
