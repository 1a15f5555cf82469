import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Energy that comes out for the energy that is stored: the honest figure for a power bank, where charges at two voltages must not be compared. */
export const energyRatio = defineFormula({
  id: 'energy-ratio',
  title: 'Energy ratio',
  subject: 'energy',
  meaning:
    'Energy that comes out for the energy that is stored: the honest figure for a power bank, where charges at two voltages must not be compared.',
  expression: 'r = \\frac{E_{\\mathrm{out}}}{E_{\\mathrm{in}}}',
  output: { tex: 'r', dimension: 'ratio', meaning: 'energy ratio', unit: '%' },
  inputs: {
    delivered: { tex: 'E_{\\mathrm{out}}', dimension: 'energy', meaning: 'energy delivered at the output', unit: 'Wh' },
    stored: { tex: 'E_{\\mathrm{in}}', dimension: 'energy', meaning: 'energy stored in the cells', unit: 'Wh' },
  },
  compute({ delivered, stored }) {
    return delivered / stored;
  },
  validity: ['The stored energy must be above zero.'],
  source: { title: 'Definition', section: 'ratio of energies', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc, from printed 10 000 mAh at 3.7 V and 5500 mAh at 5 V'),
      inputs: { delivered: '27.5 Wh', stored: '37 Wh' },
      printed: '74.3 %',
      kind: 'independent',
    },
  ],
});
