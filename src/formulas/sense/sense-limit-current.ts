import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak current at which a sense resistor reaches the threshold of its controller. */
export const senseLimitCurrent = defineFormula({
  id: 'sense-limit-current',
  title: 'Current limit of a sense resistor',
  subject: 'sense',
  meaning: 'Peak current at which a sense resistor reaches the threshold of its controller.',
  expression: 'I = \\frac{V_{s}}{R_{s}}',
  output: { tex: 'I', dimension: 'current', meaning: 'current limit', unit: 'A' },
  inputs: {
    threshold: { tex: 'V_{s}', dimension: 'voltage', meaning: 'threshold of the controller', unit: 'V' },
    resistance: { tex: 'R_{s}', dimension: 'resistance', meaning: 'sense resistance', unit: 'mΩ' },
  },
  compute({ threshold, resistance }) {
    return threshold / resistance;
  },
  validity: ['Slope compensation and the delay of the controller shift it.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.5'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.5: printed for the fitted 0.75 Ω'),
      inputs: { threshold: '1 V', resistance: '0.75 Ω' },
      printed: '1.36 A',
      kind: 'published',
      allowance: {
        fraction: 0.018,
        reason: 'the source prints the wanted 1.36 A beside the nearest standard value, which limits at 1.33 A',
      },
    },
    { source: workedWith('bc'), inputs: { threshold: '0.2 V', resistance: '15 mΩ' }, printed: '13.33 A', kind: 'independent' },
  ],
});
