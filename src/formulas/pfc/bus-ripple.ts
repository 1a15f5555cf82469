import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak-to-peak ripple at twice the line frequency on the bus capacitor of a PFC stage. */
export const busRipple = defineFormula({
  id: 'bus-ripple',
  title: 'Ripple of the PFC bus',
  subject: 'pfc',
  meaning: 'Peak-to-peak ripple at twice the line frequency on the bus capacitor of a PFC stage.',
  expression: '\\Delta V = \\frac{P_{o}}{2\\pi f_{L}\\,C\\,V_{o}}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
  inputs: {
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered by the stage', unit: 'W' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bus capacitance', unit: 'µF' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, frequency, capacitance, bus }) {
    return power / (2 * Math.PI * frequency * capacitance * bus);
  },
  validity: ['Unity power factor; ripple small against the bus.'],
  remarks: [
    'SLUS767E divides by the efficiency, which overstates the ripple: its equation gives 14 V, its running text says 11 V, the ideal figure is 13.0 V.',
  ],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 31, solved for the ripple'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 23: 300 W over its 92 %'),
      inputs: { power: '326.087 W', frequency: '47 Hz', capacitance: '200 µF', bus: '390 V' },
      printed: '14 V',
      kind: 'published',
    },
    {
      source: workedWith('numerical integration of the bus over the mains cycle, within 0.1 %'),
      inputs: { power: '300 W', frequency: '47 Hz', capacitance: '200 µF', bus: '390 V' },
      printed: '13.02 V',
      kind: 'independent',
    },
  ],
});
