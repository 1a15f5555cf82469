import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat that the leakage inductance makes in a resistor-capacitor-diode clamp. */
export const clampLoss = defineFormula({
  id: 'clamp-loss',
  title: 'Loss of an RCD clamp',
  subject: 'flyback',
  meaning: 'Heat that the leakage inductance makes in a resistor-capacitor-diode clamp.',
  expression: 'P = \\frac{f\\,L_{k}\\,\\hat{I}_{p}^{2}}{2}\\,\\frac{V_{\\mathrm{clamp}}}{V_{\\mathrm{clamp}} - V_{R}}',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    leakage: { tex: 'L_{k}', dimension: 'inductance', meaning: 'leakage inductance, primary', unit: 'µH' },
    peak: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
    clamp: { tex: 'V_{\\mathrm{clamp}}', dimension: 'voltage', meaning: 'voltage over the clamp, above the input', unit: 'V' },
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  },
  compute({ frequency, leakage, peak, clamp, reflected }) {
    return clamp > reflected ? (0.5 * frequency * leakage * peak ** 2 * clamp) / (clamp - reflected) : Number.NaN;
  },
  validity: ['The clamp must stand above the reflected voltage.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 26'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 26, appendix step 11'),
      inputs: { frequency: '66 kHz', leakage: '4.5 µH', peak: '2.01 A', clamp: '190 V', reflected: '85 V' },
      printed: '1.1 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 8: clamp at 2.5 times the reflected 12.35 V'),
      inputs: { frequency: '125 kHz', leakage: '0.102 µH', peak: '8.4 A', clamp: '30.875 V', reflected: '12.35 V' },
      printed: '0.75 W',
      kind: 'published',
    },
    {
      source: workedWith('Python, from AN-4137'),
      inputs: { frequency: '66 kHz', leakage: '4.5 µH', peak: '2.01 A', clamp: '190 V', reflected: '85 V' },
      printed: '1.0856 W',
      kind: 'independent',
    },
  ],
});
