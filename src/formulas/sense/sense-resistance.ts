import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Sense resistance whose threshold lies a margin above the peak current. */
export const senseResistance = defineFormula({
  id: 'sense-resistance',
  title: 'Sense resistance for a limit',
  subject: 'sense',
  meaning: 'Sense resistance whose threshold lies a margin above the peak current.',
  expression: 'R_{s} = \\frac{V_{s}}{k\\,\\hat{I}}',
  output: { tex: 'R_{s}', dimension: 'resistance', meaning: 'sense resistance', unit: 'mΩ' },
  inputs: {
    threshold: { tex: 'V_{s}', dimension: 'voltage', meaning: 'threshold of the controller', unit: 'V' },
    margin: { tex: 'k', dimension: 'ratio', meaning: 'limit over peak current', unit: '1' },
    peak: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
  },
  compute({ threshold, margin, peak }) {
    return threshold / (margin * peak);
  },
  validity: ['Slope compensation and the delay of the controller shift it.'],
  source: cite(PUBLICATIONS.maximFlyback, 'step 7'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 7'),
      inputs: { threshold: '305 mV', margin: '1.2', peak: '8.4017 A' },
      printed: '30.25 mΩ',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 28'),
      inputs: { threshold: '0.2 V', margin: '1', peak: '13.021 A' },
      printed: '0.015 Ω',
      kind: 'published',
    },
  ],
});
