import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms of half of the bus and the alternating part together. */
export const llcCapacitorRmsVoltage = defineFormula({
  id: 'llc-capacitor-rms-voltage',
  title: 'Rms voltage of the resonant capacitor',
  subject: 'llc',
  meaning: 'Rms of half of the bus and the alternating part together.',
  expression: 'V_{Cr} = \\sqrt{\\left(\\frac{V_{\\mathrm{in}}}{2}\\right)^{2} + V_{C}^{2}}',
  output: { tex: 'V_{Cr}', dimension: 'voltage', meaning: 'rms voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
    alternating: { tex: 'V_{C}', dimension: 'voltage', meaning: 'alternating part, rms', unit: 'V' },
  },
  compute({ input, alternating }) {
    return Math.hypot(input / 2, alternating);
  },
  validity: ['One capacitor to ground; with two, one at each end of the bus, each sees half of the bus too.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, resonant capacitor'),
  examples: [
    {
      source: workedWith('Python, from the inputs of SLUP263'),
      inputs: { input: '405 V', alternating: '181.32 V' },
      printed: '271.81 V',
      kind: 'independent',
    },
  ],
});
