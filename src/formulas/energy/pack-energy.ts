import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Energy of all cells of a pack, however they are joined: in series the voltages add, in parallel the charges, the energy is the same. */
export const packEnergy = defineFormula({
  id: 'pack-energy',
  title: 'Energy of the cells',
  subject: 'energy',
  meaning:
    'Energy of all cells of a pack, however they are joined: in series the voltages add, in parallel the charges, the energy is the same.',
  expression: 'E = n\\,Q\\,V_{\\mathrm{nom}}',
  output: { tex: 'E', dimension: 'energy', meaning: 'energy of the pack', unit: 'Wh' },
  inputs: {
    cells: { tex: 'n', dimension: 'ratio', meaning: 'count of cells', unit: '1' },
    charge: { tex: 'Q', dimension: 'charge', meaning: 'rated charge of one cell', unit: 'mAh' },
    voltage: { tex: 'V_{\\mathrm{nom}}', dimension: 'voltage', meaning: 'nominal voltage of one cell', unit: 'V' },
  },
  compute({ cells, charge, voltage }) {
    return cells * charge * voltage;
  },
  validity: ['Equal cells.'],
  source: { title: 'Definition', section: 'cells times charge times nominal voltage', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc: two cells of 5000 mAh at 3.6 V'),
      inputs: { cells: '2', charge: '5000 mAh', voltage: '3.6 V' },
      printed: '36 Wh',
      kind: 'independent',
    },
    {
      source: {
        title: 'Watt-hour calculator with worked examples',
        section: '20 000 mAh at 3.7 V are 74 Wh, here as two cells of 10 000 mAh',
        standing: 'read',
        url: 'https://devutl.com/watt-hour-battery-calculator',
      },
      inputs: { cells: '2', charge: '10000 mAh', voltage: '3.7 V' },
      printed: '74 Wh',
      kind: 'published',
    },
  ],
});
