import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Power that a resistor turns into heat at a given voltage: what a permanent discharge path costs. */
export const resistorDissipation = defineFormula({
  id: 'resistor-dissipation',
  title: 'Dissipation of a resistor',
  subject: 'resistor',
  meaning: 'Power that a resistor turns into heat at a given voltage: what a permanent discharge path costs.',
  expression: 'P = \\frac{V^{2}}{R}',
  output: { tex: 'P', dimension: 'power', meaning: 'dissipation', unit: 'mW' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage across it, rms', unit: 'V' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'kΩ' },
  },
  compute({ voltage, resistance }) {
    return voltage ** 2 / resistance;
  },
  validity: ['The resistance must be above zero.'],
  source: cite(PUBLICATIONS.circuitTheory, 'power in a resistance'),
  examples: [
    {
      source: cite(PUBLICATIONS.wuerthLineFilter, 'eq. 35, example'),
      inputs: { voltage: '253 V', resistance: '240 kΩ' },
      printed: '0.267 W',
      kind: 'published',
    },
  ],
});
