import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Ripple from the capacitance alone while a triangular current charges it. */
export const flybackDcmOutputRipple = defineFormula({
  id: 'flyback-dcm-output-ripple',
  title: 'Output ripple in discontinuous conduction',
  subject: 'flyback',
  meaning: 'Ripple from the capacitance alone while a triangular current charges it.',
  expression: '\\Delta V = \\frac{I_{o}}{f\\,C_{o}}\\left(1 - \\frac{I_{o}}{\\hat{I}_{s}}\\right)^{2}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'mV' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    capacitance: { tex: 'C_{o}', dimension: 'capacitance', meaning: 'output capacitance', unit: 'µF' },
    peak: { tex: '\\hat{I}_{s}', dimension: 'current', meaning: 'peak secondary current', unit: 'A' },
  },
  compute({ current, frequency, capacitance, peak }) {
    return current <= peak / 2 ? (current / (frequency * capacitance)) * (1 - current / peak) ** 2 : Number.NaN;
  },
  turningPoints({ peak }) {
    return { current: peak / 3 };
  },
  validity: ['The series resistance is left out.', 'The peak must be at least twice the output current.'],
  source: cite(PUBLICATIONS.maximFlyback, 'step 12'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 12'),
      inputs: { current: '1 A', frequency: '125 kHz', capacitance: '47.6 µF', peak: '4.2 A' },
      printed: '97.2 mV',
      kind: 'published',
      allowance: { fraction: 0.005, reason: 'the source works with its rounded 4.17 A and prints 0.4 % less' },
    },
  ],
});
