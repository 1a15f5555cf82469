import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Half of the bus and the crest of the alternating part, in normal operation. */
export const llcCapacitorPeakVoltage = defineFormula({
  id: 'llc-capacitor-peak-voltage',
  title: 'Peak voltage of the resonant capacitor',
  subject: 'llc',
  meaning: 'Half of the bus and the crest of the alternating part, in normal operation.',
  expression: '\\hat{V}_{Cr} = \\frac{V_{\\mathrm{in}}}{2} + \\frac{\\sqrt{2}\\,I_{r}}{2\\pi f\\,C_{r}}',
  output: { tex: '\\hat{V}_{Cr}', dimension: 'voltage', meaning: 'peak voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
    current: { tex: 'I_{r}', dimension: 'current', meaning: 'current of the resonant tank, rms', unit: 'A' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    capacitance: { tex: 'C_{r}', dimension: 'capacitance', meaning: 'resonant capacitance', unit: 'nF' },
  },
  compute({ input, current, frequency, capacitance }) {
    return input / 2 + (Math.SQRT2 * current) / (2 * Math.PI * frequency * capacitance);
  },
  validity: ['Normal operation; overload goes further.'],
  remarks: ['Measured in the same paper: 325 V.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 24'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 24, p. 11, step 8'),
      inputs: { input: '400 V', current: '1.32 A', frequency: '99 kHz', capacitance: '22 nF' },
      printed: '336 V',
      kind: 'published',
    },
  ],
});
