import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Peak-to-peak ripple on the capacitor behind a bridge that a steady current discharges. */
export const rectifierRipple = defineFormula({
  id: 'rectifier-ripple',
  title: 'Ripple of a rectifier with capacitor',
  subject: 'bulk',
  meaning: 'Peak-to-peak ripple on the capacitor behind a bridge that a steady current discharges.',
  expression: '\\Delta V = \\frac{I}{2 f_{L}\\,C}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'load current', unit: 'A' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  },
  compute({ current, frequency, capacitance }) {
    return current / (2 * frequency * capacitance);
  },
  validity: ['The conduction time is left out, so the result is an upper bound.'],
  source: cite(PUBLICATIONS.jacobTextbook, 'example 9.1, p. 457'),
  examples: [
    {
      source: cite(PUBLICATIONS.jacobTextbook, 'example 9.1, p. 457: 35.7 V over 16 Ω'),
      inputs: { current: '2.2324 A', frequency: '60 Hz', capacitance: '4700 µF' },
      printed: '3.96 V',
      kind: 'published',
    },
  ],
});
