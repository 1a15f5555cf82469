import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Voltage that a clamp settles at for a current other than the one it was designed for. */
export const clampVoltage = defineFormula({
  id: 'clamp-voltage',
  title: 'Voltage of an RCD clamp',
  subject: 'flyback',
  meaning: 'Voltage that a clamp settles at for a current other than the one it was designed for.',
  expression: 'V_{\\mathrm{clamp}} = \\frac{V_{R} + \\sqrt{V_{R}^{2} + 2 R\\,L_{k}\\,f\\,\\hat{I}_{p}^{2}}}{2}',
  output: { tex: 'V_{\\mathrm{clamp}}', dimension: 'voltage', meaning: 'voltage over the clamp, above the input', unit: 'V' },
  inputs: {
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance of the clamp', unit: 'kΩ' },
    leakage: { tex: 'L_{k}', dimension: 'inductance', meaning: 'leakage inductance, primary', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    peak: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
  },
  compute({ reflected, resistance, leakage, frequency, peak }) {
    return (reflected + Math.sqrt(reflected ** 2 + 2 * resistance * leakage * frequency * peak ** 2)) / 2;
  },
  validity: ['The capacitor of the clamp is large enough to hold its voltage over a cycle.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 30'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 30, appendix step 11'),
      inputs: { reflected: '85 V', resistance: '33.1 kΩ', leakage: '4.5 µH', frequency: '66 kHz', peak: '1.75 A' },
      printed: '172 V',
      kind: 'published',
      allowance: { fraction: 0.001, reason: 'the source prints 172 V where its inputs give 172.3 to 172.6 V' },
    },
  ],
});
