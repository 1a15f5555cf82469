import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms in primary winding, resonant inductance and resonant capacitor: load and magnetising current at right angles. */
export const llcPrimaryCurrent = defineFormula({
  id: 'llc-primary-current',
  title: 'Primary current of an LLC',
  subject: 'llc',
  meaning: 'Rms in primary winding, resonant inductance and resonant capacitor: load and magnetising current at right angles.',
  expression: 'I_{r} = \\sqrt{I_{oe}^{2} + I_{m}^{2}}',
  output: { tex: 'I_{r}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    load: { tex: 'I_{oe}', dimension: 'current', meaning: 'load current in the primary, rms', unit: 'A' },
    magnetising: { tex: 'I_{m}', dimension: 'current', meaning: 'magnetising current, rms', unit: 'A' },
  },
  compute({ load, magnetising }) {
    return Math.hypot(load, magnetising);
  },
  validity: ['First-harmonic approximation; worst at full load and the lowest frequency.'],
  remarks: ['Three variants are in use; they stand apart as formulas of their own.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, primary currents'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example'),
      inputs: { load: '1.91 A', magnetising: '1.63 A' },
      printed: '2.51 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 9'),
      inputs: { load: '7.63621 A', magnetising: '6.99217 A' },
      printed: '10.354 A',
      kind: 'published',
    },
  ],
});
