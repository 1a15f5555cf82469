import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Half of the bus and the crest that the current limit allows at the lowest frequency. */
export const llcCapacitorOverloadVoltage = defineFormula({
  id: 'llc-capacitor-overload-voltage',
  title: 'Peak voltage of the resonant capacitor at overload',
  subject: 'llc',
  meaning: 'Half of the bus and the crest that the current limit allows at the lowest frequency.',
  expression: '\\hat{V}_{Cr} = \\frac{V_{\\mathrm{in}}}{2} + \\frac{I_{\\mathrm{lim}}}{2\\pi f_{\\min}\\,C_{r}}',
  output: { tex: '\\hat{V}_{Cr}', dimension: 'voltage', meaning: 'peak voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
    limit: { tex: 'I_{\\mathrm{lim}}', dimension: 'current', meaning: 'peak current at the current limit', unit: 'A' },
    frequency: { tex: 'f_{\\min}', dimension: 'frequency', meaning: 'lowest switching frequency', unit: 'kHz' },
    capacitance: { tex: 'C_{r}', dimension: 'capacitance', meaning: 'resonant capacitance', unit: 'nF' },
  },
  compute({ input, limit, frequency, capacitance }) {
    return input / 2 + limit / (2 * Math.PI * frequency * capacitance);
  },
  validity: ['At the current limit and the lowest frequency.'],
  remarks: ['Page 15 of AN-4151 still speaks of 419 V at overload; its equation gives 501 V.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 25'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 25, p. 11, step 8'),
      inputs: { input: '400 V', limit: '3 A', frequency: '72 kHz', capacitance: '22 nF' },
      printed: '502 V',
      kind: 'published',
      allowance: { fraction: 0.001, reason: 'the source prints 502 V where its inputs give 501.4 V' },
    },
  ],
});
