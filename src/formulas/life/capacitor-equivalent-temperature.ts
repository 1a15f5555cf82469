import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Steady temperature at which a capacitor would live as long. */
export const capacitorEquivalentTemperature = defineFormula({
  id: 'capacitor-equivalent-temperature',
  title: 'Temperature that gives a life',
  subject: 'life',
  meaning: 'Steady temperature at which a capacitor would live as long.',
  expression: 'T = T_{r} - 10\\,\\log_{2}\\frac{L}{L_{0}}',
  output: { tex: 'T', dimension: 'temperature', meaning: 'equivalent temperature', unit: '°C' },
  inputs: {
    ratedTemperature: { tex: 'T_{r}', dimension: 'temperature', meaning: 'rated temperature', unit: '°C' },
    life: { tex: 'L', dimension: 'time', meaning: 'life', unit: 'h' },
    rated: { tex: 'L_{0}', dimension: 'time', meaning: 'rated life at the rated temperature', unit: 'h' },
  },
  compute({ ratedTemperature, life, rated }) {
    return ratedTemperature - 10 * Math.log2(life / rated);
  },
  validity: ['The mixed life is the harmonic mean of the lives by their shares.'],
  source: cite(PUBLICATIONS.coselLife, '2, example'),
  examples: [
    {
      source: cite(PUBLICATIONS.coselLife, '2, example: 8 h each at 45, 55 and 65 °C'),
      inputs: { ratedTemperature: '105 °C', life: '27428.6 h', rated: '1000 h' },
      printed: '57.2 °C',
      kind: 'published',
    },
  ],
});
