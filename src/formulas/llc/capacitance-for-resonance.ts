import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Capacitance that resonates with an inductance, such as the stray one behind ringing. */
export const capacitanceForResonance = defineFormula({
  id: 'capacitance-for-resonance',
  title: 'Capacitance for a resonant frequency',
  subject: 'llc',
  meaning: 'Capacitance that resonates with an inductance, such as the stray one behind ringing.',
  expression: 'C = \\frac{1}{(2\\pi f_{0})^{2}\\,L}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'nF' },
  inputs: {
    frequency: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  },
  compute({ frequency, inductance }) {
    return 1 / ((2 * Math.PI * frequency) ** 2 * inductance);
  },
  validity: ['Losses left out.'],
  source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.3, eq. 3'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.3, eq. 3'),
      inputs: { frequency: '2 MHz', inductance: '3.8 µH' },
      printed: '1.7 nF',
      kind: 'published',
    },
    { source: workedWith('Python'), inputs: { frequency: '100 kHz', inductance: '126 µH' }, printed: '20.10 nF', kind: 'independent' },
  ],
});
