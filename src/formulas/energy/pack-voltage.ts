import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage of cells in series. */
export const packVoltage = defineFormula({
  id: 'pack-voltage',
  title: 'Pack voltage',
  subject: 'energy',
  meaning: 'Voltage of cells in series.',
  expression: 'V = n\\,V_{\\mathrm{cell}}',
  output: { tex: 'V', dimension: 'voltage', meaning: 'voltage of the pack', unit: 'V' },
  inputs: {
    cells: { tex: 'n', dimension: 'ratio', meaning: 'cells in series', unit: '1' },
    cell: { tex: 'V_{\\mathrm{cell}}', dimension: 'voltage', meaning: 'voltage of one cell', unit: 'V' },
  },
  compute({ cells, cell }) {
    return cells * cell;
  },
  validity: ['Cells in balance.'],
  source: { title: 'Definition', section: 'cells in series', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc, two full lithium-ion cells of 4.2 V'),
      inputs: { cells: '2', cell: '4.2 V' },
      printed: '8.4 V',
      kind: 'independent',
    },
  ],
});
