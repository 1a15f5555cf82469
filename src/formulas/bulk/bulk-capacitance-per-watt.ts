import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Bulk capacitance for each watt of rated output power: how much a design without power-factor correction keeps in store. */
export const bulkCapacitancePerWatt = defineFormula({
  id: 'bulk-capacitance-per-watt',
  title: 'Bulk capacitance per watt',
  subject: 'bulk',
  meaning: 'Bulk capacitance for each watt of rated output power: how much a design without power-factor correction keeps in store.',
  expression: 'c = \\frac{C}{P}',
  output: { tex: 'c', dimension: 'capacitance per power', meaning: 'capacitance per watt', unit: 'µF/W' },
  inputs: {
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
    power: { tex: 'P', dimension: 'power', meaning: 'rated output power', unit: 'W' },
  },
  compute({ capacitance, power }) {
    return capacitance / power;
  },
  validity: ['Rules of thumb for the figure are for output power without a PFC stage.', 'The power must be above zero.'],
  source: { title: 'Definition', section: 'capacitance over power', standing: 'common practice' },
  examples: [
    {
      source: workedWith('Python, from the 82 µF and 65 W that TIDA-01622 prints'),
      inputs: { capacitance: '82 µF', power: '65 W' },
      printed: '1.26 µF/W',
      kind: 'independent',
    },
  ],
});
