import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Gain that the tank must reach when the bus has fallen to its lowest. */
export const llcLargestGain = defineFormula({
  id: 'llc-largest-gain',
  title: 'Largest gain wanted',
  subject: 'llc',
  meaning: 'Gain that the tank must reach when the bus has fallen to its lowest.',
  expression: 'M_{\\max} = M_{\\min}\\,\\frac{V_{\\mathrm{in,max}}}{V_{\\mathrm{in,min}}}',
  output: { tex: 'M_{\\max}', dimension: 'ratio', meaning: 'largest gain', unit: '1' },
  inputs: {
    gain: { tex: 'M_{\\min}', dimension: 'ratio', meaning: 'gain at the highest input', unit: '1' },
    highest: { tex: 'V_{\\mathrm{in,max}}', dimension: 'voltage', meaning: 'highest bus voltage', unit: 'V' },
    lowest: { tex: 'V_{\\mathrm{in,min}}', dimension: 'voltage', meaning: 'lowest bus voltage', unit: 'V' },
  },
  compute({ gain, highest, lowest }) {
    return (gain * highest) / lowest;
  },
  validity: ['The lowest bus is that at the end of the hold-up time.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 15'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 15, p. 9'),
      inputs: { gain: '1.11803', highest: '400 V', lowest: '349.285 V' },
      printed: '1.28',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.infineonResonant, 'p. 7, 2.2.3'),
      inputs: { gain: '1', highest: '400 V', lowest: '337.2 V' },
      printed: '1.19',
      kind: 'published',
    },
  ],
});
