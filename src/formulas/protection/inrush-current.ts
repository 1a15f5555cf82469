import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak current into an empty capacitor at the crest of the mains. */
export const inrushCurrent = defineFormula({
  id: 'inrush-current',
  title: 'Inrush current',
  subject: 'protection',
  meaning: 'Peak current into an empty capacitor at the crest of the mains.',
  expression: '\\hat{I} = \\frac{\\hat{V}}{R}',
  output: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak inrush current', unit: 'A' },
  inputs: {
    crest: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest of the mains', unit: 'V' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance of thermistor, bridge, fuse and mains', unit: 'Ω' },
  },
  compute({ crest, resistance }) {
    return crest / resistance;
  },
  validity: ['Cold thermistor; the inductance of the mains lowers it.'],
  source: cite(PUBLICATIONS.amethermInrush, 'worked example, solved for the current'),
  examples: [
    {
      source: workedWith('bc: 373.35 V through 10 Ω'),
      inputs: { crest: '373.35 V', resistance: '10 Ω' },
      printed: '37.34 A',
      kind: 'independent',
    },
  ],
});
