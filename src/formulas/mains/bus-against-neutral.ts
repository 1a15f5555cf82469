import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage of the rectified bus against the neutral, rms: what creepage between the bus and an output tied to earth has to stand. */
export const busAgainstNeutral = defineFormula({
  id: 'bus-against-neutral',
  title: 'Bus against the neutral',
  subject: 'mains',
  meaning: 'Voltage of the rectified bus against the neutral, rms: what creepage between the bus and an output tied to earth has to stand.',
  expression: 'V = \\sqrt{V_{b}^{2} - \\frac{2}{\\pi}\\,V_{b}\\,\\hat{V} + \\frac{\\hat{V}^{2}}{4}}',
  output: { tex: 'V', dimension: 'voltage', meaning: 'voltage of the positive bus against the neutral, rms', unit: 'V' },
  inputs: {
    bus: { tex: 'V_{b}', dimension: 'voltage', meaning: 'bus voltage', unit: 'V' },
    crest: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest of the mains', unit: 'V' },
  },
  compute({ bus, crest }) {
    return crest > 0 && bus >= crest ? Math.sqrt(bus ** 2 - (2 / Math.PI) * bus * crest + crest ** 2 / 4) : Number.NaN;
  },
  turningPoints({ bus }) {
    return { crest: (4 * bus) / Math.PI };
  },
  validity: [
    'A bridge ties the negative bus to the neutral in one half cycle and to the line in the other; the bus is at least the crest and has no ripple.',
    'An indication: at the transformer the switched voltage counts, and a laboratory measures it.',
  ],
  source: {
    title: 'Derived here',
    section: 'mean square of the bus over one half cycle at the bus and one less the sine',
    standing: 'common practice',
  },
  examples: [
    {
      source: workedWith('Python, mean over 200 000 points'),
      inputs: { bus: '390 V', crest: '339.411 V' },
      printed: '310.9 V',
      kind: 'independent',
    },
  ],
});
