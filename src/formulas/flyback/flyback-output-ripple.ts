import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Ripple from the capacitance and the series resistance of the output capacitor. */
export const flybackOutputRipple = defineFormula({
  id: 'flyback-output-ripple',
  title: 'Output ripple of a flyback',
  subject: 'flyback',
  meaning: 'Ripple from the capacitance and the series resistance of the output capacitor.',
  expression: '\\Delta V = \\frac{I_{o}\\,D}{C_{o}\\,f} + \\hat{I}_{s}\\,R_{C}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
    capacitance: { tex: 'C_{o}', dimension: 'capacitance', meaning: 'output capacitance', unit: 'µF' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    peak: { tex: '\\hat{I}_{s}', dimension: 'current', meaning: 'peak secondary current', unit: 'A' },
    resistance: { tex: 'R_{C}', dimension: 'resistance', meaning: 'series resistance of the output capacitor', unit: 'mΩ' },
  },
  compute({ current, duty, capacitance, frequency, peak, resistance }) {
    return (current * duty) / (capacitance * frequency) + peak * resistance;
  },
  validity: ['Both parts at their worst; a second filter behind is left out.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 25'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 25, appendix step 10, 3.3 V output'),
      inputs: { current: '2 A', duty: '0.48', capacitance: '2000 µF', frequency: '66 kHz', peak: '6.32708 A', resistance: '0.1 Ω' },
      printed: '0.64 V',
      kind: 'published',
    },
    {
      source: workedWith('Python'),
      inputs: { current: '2 A', duty: '0.48', capacitance: '2000 µF', frequency: '66 kHz', peak: '6.32708 A', resistance: '0.1 Ω' },
      printed: '0.63998 V',
      kind: 'independent',
    },
  ],
});
