import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance whose voltage rises by a given amount when one cycle empties the transformer into it. */
export const outputCapacitancePerCycle = defineFormula({
  id: 'output-capacitance-per-cycle',
  title: 'Output capacitance for one cycle',
  subject: 'flyback',
  meaning: 'Capacitance whose voltage rises by a given amount when one cycle empties the transformer into it.',
  expression: 'C_{o} = \\frac{L_{p}\\,\\hat{I}_{p}^{2}}{4 V_{o}\\,\\Delta V}',
  output: { tex: 'C_{o}', dimension: 'capacitance', meaning: 'output capacitance', unit: 'µF' },
  inputs: {
    inductance: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance', unit: 'µH' },
    peak: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    ripple: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'mV' },
  },
  compute({ inductance, peak, output, ripple }) {
    return (inductance * peak ** 2) / (4 * output * ripple);
  },
  validity: ['Discontinuous conduction.'],
  source: cite(PUBLICATIONS.texasPrimaryRegulated, '8.2.2.9, eq. 29'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasPrimaryRegulated, '8.2.2.9: ripple of 60 mV over 2.3'),
      inputs: { inductance: '700 µH', peak: '0.713 A', output: '5.3 V', ripple: '26.087 mV' },
      printed: '643 µF',
      kind: 'published',
    },
  ],
});
