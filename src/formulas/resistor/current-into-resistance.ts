import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Current that a voltage drives through a resistance: what a meter really lets through at the voltage that it shows. */
export const currentIntoResistance = defineFormula({
  id: 'current-into-resistance',
  title: 'Current into a resistance',
  subject: 'resistor',
  meaning: 'Current that a voltage drives through a resistance: what a meter really lets through at the voltage that it shows.',
  expression: 'I = \\frac{V}{R}',
  output: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'µA' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage', unit: 'V' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'MΩ' },
  },
  compute({ voltage, resistance }) {
    return voltage / resistance;
  },
  validity: ['The resistance must be above zero.'],
  source: { title: 'Elementary circuit theory', section: 'Ohm’s law', standing: 'common practice' },
  examples: [
    { source: workedWith('bc: 80 V into 10 MΩ'), inputs: { voltage: '80 V', resistance: '10 MΩ' }, printed: '8.0 µA', kind: 'independent' },
  ],
});
