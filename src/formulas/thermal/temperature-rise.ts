import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** How much hotter a place is than the air around the device: the figure that holds in another room too. */
export const temperatureRise = defineFormula({
  id: 'temperature-rise',
  title: 'Temperature rise',
  subject: 'thermal',
  meaning: 'How much hotter a place is than the air around the device: the figure that holds in another room too.',
  expression: '\\Delta T = T - T_{a}',
  output: { tex: '\\Delta T', dimension: 'temperature difference', meaning: 'rise over the air', unit: 'K' },
  inputs: {
    temperature: { tex: 'T', dimension: 'temperature', meaning: 'temperature measured', unit: '°C' },
    ambient: { tex: 'T_{a}', dimension: 'temperature', meaning: 'air temperature', unit: '°C' },
  },
  compute({ temperature, ambient }) {
    return temperature - ambient;
  },
  validity: ['Steady state; the air temperature is taken beside the device, out of the air that it warms.'],
  remarks: ['A limit for touching is not moved by it: it is compared with the temperature as measured.'],
  source: cite(PUBLICATIONS.openHeatNotes, 'heat dissipation example, solved for the difference'),
  examples: [
    {
      source: cite(PUBLICATIONS.openHeatNotes, 'heat dissipation example: 5 W through 12 K/W, 20 °C to 80 °C'),
      inputs: { temperature: '80 °C', ambient: '20 °C' },
      printed: '60 K',
      kind: 'published',
    },
    { source: workedWith('bc'), inputs: { temperature: '66.4 °C', ambient: '23.7 °C' }, printed: '42.7 K', kind: 'independent' },
  ],
});
