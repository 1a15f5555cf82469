import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Most current that one converter gives to several outputs at one voltage. */
export const sharedConverterCurrent = defineFormula({
  id: 'shared-converter-current',
  title: 'Current of a converter that several ports share',
  subject: 'energy',
  meaning:
    'Most current that one converter gives at one voltage: what its ports can draw each, as far as their shared power allows, and at least what one of them may draw alone.',
  expression: 'I = \\max\\left(I_{1},\\ \\min\\left(\\textstyle\\sum I,\\ \\frac{P}{V}\\right)\\right)',
  output: { tex: 'I', dimension: 'current', meaning: 'current of the converter', unit: 'A' },
  inputs: {
    alone: { tex: 'I_{1}', dimension: 'current', meaning: 'largest current of a single port at this voltage', unit: 'A' },
    sum: { tex: '\\textstyle\\sum I', dimension: 'current', meaning: 'currents of all ports at this voltage', unit: 'A' },
    power: { tex: 'P', dimension: 'power', meaning: 'power that the ports share', unit: 'W' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
  },
  compute({ alone, sum, power, voltage }) {
    return Math.max(alone, Math.min(sum, power / voltage));
  },
  validity: ['All ports of one converter stand at one voltage.', 'In use at once no port gets more than alone.'],
  source: { title: 'Definition', section: 'outputs of one converter', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc: 24 W at 5 V, from the note of a two-port car charger that names 4.8 A together'),
      inputs: { alone: '3 A', sum: '6 A', power: '24 W', voltage: '5 V' },
      printed: '4.8 A',
      kind: 'independent',
    },
    {
      source: workedWith('bc'),
      inputs: { alone: '3.00 A', sum: '5.40 A', power: '15.0 W', voltage: '5.00 V' },
      printed: '3.00 A',
      kind: 'independent',
    },
  ],
});
