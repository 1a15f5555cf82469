import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Life expected at a temperature: twice as long for each 10 K below the rated one. */
export const capacitorLife = defineFormula({
  id: 'capacitor-life',
  title: 'Life of an electrolytic capacitor',
  subject: 'life',
  meaning: 'Life expected at a temperature: twice as long for each 10 K below the rated one.',
  expression: 'L = L_{0}\\,2^{(T_{r} - T)/10}',
  output: { tex: 'L', dimension: 'time', meaning: 'life', unit: 'h' },
  inputs: {
    rated: { tex: 'L_{0}', dimension: 'time', meaning: 'rated life at the rated temperature', unit: 'h' },
    ratedTemperature: { tex: 'T_{r}', dimension: 'temperature', meaning: 'rated temperature', unit: '°C' },
    temperature: { tex: 'T', dimension: 'temperature', meaning: 'temperature of the capacitor', unit: '°C' },
  },
  compute({ rated, ratedTemperature, temperature }) {
    return rated * 2 ** ((ratedTemperature - temperature) / 10);
  },
  validity: ['Ripple within its rating; no claim beyond 15 years.', 'A rule of the trade, not a promise.'],
  source: cite(PUBLICATIONS.coselLife, '2, example'),
  examples: [
    {
      source: cite(PUBLICATIONS.coselLife, '2, example, 45 °C'),
      inputs: { rated: '1000 h', ratedTemperature: '105 °C', temperature: '45 °C' },
      printed: '64000 h',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.coselLife, '2, example, 55 °C'),
      inputs: { rated: '1000 h', ratedTemperature: '105 °C', temperature: '55 °C' },
      printed: '32000 h',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.coselLife, '2, example, 65 °C'),
      inputs: { rated: '1000 h', ratedTemperature: '105 °C', temperature: '65 °C' },
      printed: '16000 h',
      kind: 'published',
    },
  ],
});
