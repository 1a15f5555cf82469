import { defineFormula } from '../../values/define-formula.ts';
import type { Source } from '../../values/value.ts';

/** Energy of a cell or a pack from its charge and its nominal voltage: the figure that transport rules use. */
export const batteryEnergy = defineFormula({
  id: 'battery-energy',
  title: 'Energy of a battery',
  subject: 'energy',
  meaning: 'Energy of a cell or a pack from its charge and its nominal voltage: the figure that transport rules use.',
  expression: 'E = Q\\,V_{\\mathrm{nom}}',
  output: { tex: 'E', dimension: 'energy', meaning: 'energy', unit: 'Wh' },
  inputs: {
    charge: { tex: 'Q', dimension: 'charge', meaning: 'rated charge', unit: 'mAh' },
    voltage: { tex: 'V_{\\mathrm{nom}}', dimension: 'voltage', meaning: 'nominal voltage of the cells', unit: 'V' },
  },
  compute({ charge, voltage }) {
    return charge * voltage;
  },
  validity: ['The voltage is that of the cells, not that of the output.'],
  source: { title: 'Definition', section: 'charge times nominal voltage', standing: 'common practice' },
  examples: [
    {
      source: cellEnergyTable('10 000 mAh at 3.7 V'),
      inputs: { charge: '10000 mAh', voltage: '3.7 V' },
      printed: '37 Wh',
      kind: 'published',
    },
    {
      source: cellEnergyTable('26 800 mAh at 3.7 V'),
      inputs: { charge: '26800 mAh', voltage: '3.7 V' },
      printed: '99.16 Wh',
      kind: 'published',
    },
    {
      source: cellEnergyTable('20 000 mAh at 3.7 V'),
      inputs: { charge: '20000 mAh', voltage: '3.7 V' },
      printed: '74 Wh',
      kind: 'published',
    },
  ],
});

function cellEnergyTable(section: string): Source {
  return {
    title: 'Watt-hour calculator with worked examples',
    section,
    standing: 'read',
    url: 'https://devutl.com/watt-hour-battery-calculator',
  };
}
