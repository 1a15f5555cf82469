import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance behind a mains bridge for a wanted ripple into a resistive load. */
export const smoothingCapacitance = defineFormula({
  id: 'smoothing-capacitance',
  title: 'Smoothing capacitance for a ripple',
  subject: 'bulk',
  meaning: 'Capacitance behind a mains bridge for a wanted ripple into a resistive load.',
  expression: 'C = \\frac{1}{4 f_{L}\\,R}\\left(1 + \\frac{1}{\\sqrt{2}\\,r}\\right)',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  inputs: {
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'load resistance', unit: 'Ω' },
    ripple: { tex: 'r', dimension: 'ratio', meaning: 'rms ripple over mean voltage', unit: '%' },
  },
  compute({ frequency, resistance, ripple }) {
    return (1 / (4 * frequency * resistance)) * (1 + 1 / (Math.SQRT2 * ripple));
  },
  validity: ['Full-wave rectifier, resistive load, small ripple.'],
  source: cite(PUBLICATIONS.bimbhraTextbook, 'example 3.21, p. 122'),
  examples: [
    {
      source: cite(PUBLICATIONS.bimbhraTextbook, 'example 3.21, p. 122'),
      inputs: { frequency: '50 Hz', resistance: '400 Ω', ripple: '0.05' },
      printed: '189.28 µF',
      kind: 'published',
    },
  ],
});
