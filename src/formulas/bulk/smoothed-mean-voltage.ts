import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean of the voltage behind a bridge with a smoothing capacitor and a resistive load. */
export const smoothedMeanVoltage = defineFormula({
  id: 'smoothed-mean-voltage',
  title: 'Mean voltage with a smoothing capacitor',
  subject: 'bulk',
  meaning: 'Mean of the voltage behind a bridge with a smoothing capacitor and a resistive load.',
  expression: '\\bar{V} = \\hat{V}\\left(1 - \\frac{1}{4 f_{L}\\,R\\,C}\\right)',
  output: { tex: '\\bar{V}', dimension: 'voltage', meaning: 'mean voltage', unit: 'V' },
  inputs: {
    crest: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'load resistance', unit: 'Ω' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  },
  compute({ crest, frequency, resistance, capacitance }) {
    return crest * (1 - 1 / (4 * frequency * resistance * capacitance));
  },
  validity: ['Full-wave rectifier, resistive load, small ripple.'],
  source: cite(PUBLICATIONS.bimbhraTextbook, 'example 3.21, p. 122'),
  examples: [
    {
      source: cite(PUBLICATIONS.bimbhraTextbook, 'example 3.21, p. 122'),
      inputs: { crest: '325.269 V', frequency: '50 Hz', resistance: '400 Ω', capacitance: '189.277 µF' },
      printed: '303.79 V',
      kind: 'published',
    },
  ],
});
