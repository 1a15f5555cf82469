import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance that holds the ripple at twice the line frequency. */
export const busCapacitanceForRipple = defineFormula({
  id: 'bus-capacitance-for-ripple',
  title: 'Bus capacitance for a ripple',
  subject: 'pfc',
  meaning: 'Capacitance that holds the ripple at twice the line frequency.',
  expression: 'C = \\frac{P_{o}}{2\\pi f_{L}\\,\\Delta V\\,V_{o}}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'bus capacitance', unit: 'µF' },
  inputs: {
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered by the stage', unit: 'W' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    ripple: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, frequency, ripple, bus }) {
    return power / (2 * Math.PI * frequency * ripple * bus);
  },
  validity: ['Unity power factor; ripple small against the bus.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 31'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 31'),
      inputs: { power: '1200 W', frequency: '60 Hz', ripple: '10 V', bus: '400 V' },
      printed: '795.8 µF',
      kind: 'published',
    },
  ],
});
