import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Equivalent series resistance of a capacitor from its dissipation factor. */
export const seriesResistanceFromDissipation = defineFormula({
  id: 'series-resistance-from-dissipation',
  title: 'Series resistance from the dissipation factor',
  subject: 'loss',
  meaning: 'Equivalent series resistance of a capacitor from its dissipation factor.',
  expression: 'R = \\frac{\\tan\\delta}{2\\pi f\\,C}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'series resistance', unit: 'Ω' },
  inputs: {
    factor: { tex: '\\tan\\delta', dimension: 'ratio', meaning: 'dissipation factor', unit: '1' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'frequency of the dissipation factor', unit: 'Hz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  },
  compute({ factor, frequency, capacitance }) {
    return factor / (2 * Math.PI * frequency * capacitance);
  },
  validity: ['Holds at the frequency of the dissipation factor; less at the switching frequency.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 32'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 32'),
      inputs: { factor: '0.2', frequency: '120 Hz', capacitance: '1120 µF' },
      printed: '0.237 Ω',
      kind: 'published',
    },
  ],
});
