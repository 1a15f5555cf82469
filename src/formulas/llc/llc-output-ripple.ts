import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak-to-peak ripple from the series resistance of the output capacitor. */
export const llcOutputRipple = defineFormula({
  id: 'llc-output-ripple',
  title: 'Output ripple of an LLC',
  subject: 'llc',
  meaning: 'Peak-to-peak ripple from the series resistance of the output capacitor.',
  expression: '\\Delta V = \\frac{\\pi}{2}\\,I_{o}\\,R_{C}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'mV' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    resistance: { tex: 'R_{C}', dimension: 'resistance', meaning: 'series resistance of the output capacitor', unit: 'mΩ' },
  },
  compute({ current, resistance }) {
    return (Math.PI / 2) * current * resistance;
  },
  validity: ['The series resistance outweighs the capacitance.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 29'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 29, p. 12, step 9'),
      inputs: { current: '8 A', resistance: '40 mΩ' },
      printed: '0.50 V',
      kind: 'published',
    },
    { source: workedWith('Python'), inputs: { current: '8 A', resistance: '40 mΩ' }, printed: '0.5027 V', kind: 'independent' },
  ],
});
