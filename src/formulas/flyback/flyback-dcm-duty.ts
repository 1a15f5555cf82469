import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Duty at which the energy of each cycle makes the power drawn. */
export const flybackDcmDuty = defineFormula({
  id: 'flyback-dcm-duty',
  title: 'Duty of a flyback in discontinuous conduction',
  subject: 'flyback',
  meaning: 'Duty at which the energy of each cycle makes the power drawn.',
  expression: 'D = \\frac{\\sqrt{2 P_{\\mathrm{in}}\\,L_{p}\\,f}}{V_{\\mathrm{in}}}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn: output power over efficiency', unit: 'W' },
    inductance: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ power, inductance, frequency, input }) {
    return Math.sqrt(2 * power * inductance * frequency) / input;
  },
  validity: ['Discontinuous conduction.'],
  source: cite(PUBLICATIONS.maximFlyback, 'step 3'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 3: 24 W at 80 %'),
      inputs: { power: '30 W', inductance: '6.8 µH', frequency: '125 kHz', input: '17 V' },
      printed: '0.42',
      kind: 'published',
    },
    {
      source: workedWith('Python'),
      inputs: { power: '30 W', inductance: '6.8 µH', frequency: '125 kHz', input: '17 V' },
      printed: '0.42008',
      kind: 'independent',
    },
  ],
});
