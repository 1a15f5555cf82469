import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the whole current in the bus capacitor of a PFC stage in continuous conduction, line and switching frequency together. */
export const busRippleCurrent = defineFormula({
  id: 'bus-ripple-current',
  title: 'Ripple current of the bus capacitor',
  subject: 'pfc',
  meaning: 'Rms of the whole current in the bus capacitor of a PFC stage in continuous conduction, line and switching frequency together.',
  expression: 'I_{C} = \\sqrt{\\frac{8\\sqrt{2}\\,P_{o}^{2}}{3\\pi\\,V_{\\mathrm{ac}}\\,V_{o}} - \\frac{P_{o}^{2}}{V_{o}^{2}}}',
  output: { tex: 'I_{C}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered by the stage', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, rms, bus }) {
    return bus > Math.SQRT2 * rms ? power * Math.sqrt((8 * Math.SQRT2) / (3 * Math.PI * rms * bus) - 1 / bus ** 2) : Number.NaN;
  },
  turningPoints({ rms }) {
    return { bus: (3 * Math.PI * rms) / (4 * Math.SQRT2) };
  },
  validity: ['Continuous conduction, inductor ripple left out; the stage behind draws a steady current.'],
  remarks: ['The part at 100 or 120 Hz is the smaller one; a series resistance measured there overstates the loss of the rest.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 33'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 33'),
      inputs: { power: '1200 W', rms: '85 V', bus: '400 V' },
      printed: '6.47 A',
      kind: 'published',
    },
  ],
});
