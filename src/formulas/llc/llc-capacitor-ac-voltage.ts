import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms of the voltage that the tank current builds on the resonant capacitor. */
export const llcCapacitorAcVoltage = defineFormula({
  id: 'llc-capacitor-ac-voltage',
  title: 'Alternating voltage of the resonant capacitor',
  subject: 'llc',
  meaning: 'Rms of the voltage that the tank current builds on the resonant capacitor.',
  expression: 'V_{C} = \\frac{I_{r}}{2\\pi f\\,C_{r}}',
  output: { tex: 'V_{C}', dimension: 'voltage', meaning: 'rms voltage', unit: 'V' },
  inputs: {
    current: { tex: 'I_{r}', dimension: 'current', meaning: 'current of the resonant tank, rms', unit: 'A' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    capacitance: { tex: 'C_{r}', dimension: 'capacitance', meaning: 'resonant capacitance', unit: 'nF' },
  },
  compute({ current, frequency, capacitance }) {
    return current / (2 * Math.PI * frequency * capacitance);
  },
  validity: ['Sinusoidal current.'],
  remarks: ['SLUP263 as restated prints 187.9 V for its example; its own inputs give 181.3 V, which stands here.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, resonant capacitor'),
  examples: [
    {
      source: workedWith('Python, from the inputs of SLUP263'),
      inputs: { current: '2.51 A', frequency: '80.7 kHz', capacitance: '27.3 nF' },
      printed: '181.32 V',
      kind: 'independent',
    },
  ],
});
