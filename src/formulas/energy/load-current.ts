import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Direct current that goes with a power at a voltage. */
export const loadCurrent = defineFormula({
  id: 'load-current',
  title: 'Load current',
  subject: 'energy',
  meaning: 'Direct current that goes with a power at a voltage.',
  expression: 'I = \\frac{P}{V}',
  output: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
  inputs: {
    power: { tex: 'P', dimension: 'power', meaning: 'power', unit: 'W' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage', unit: 'V' },
  },
  compute({ power, voltage }) {
    return power / voltage;
  },
  validity: ['Direct current; the voltage must be above zero.'],
  source: cite(PUBLICATIONS.circuitTheory, 'power of a direct current'),
  examples: [
    {
      source: workedWith('bc, from the 90 W and 19 V of a notebook adapter board, whose label says 4.74 A'),
      inputs: { power: '90 W', voltage: '19 V' },
      printed: '4.737 A',
      kind: 'independent',
    },
  ],
});
