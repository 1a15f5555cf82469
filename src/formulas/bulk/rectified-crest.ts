import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Crest of the rectified voltage with the drop of the bridge taken off. */
export const rectifiedCrest = defineFormula({
  id: 'rectified-crest',
  title: 'Crest behind a bridge',
  subject: 'bulk',
  meaning: 'Crest of the rectified voltage with the drop of the bridge taken off.',
  expression: '\\hat{V} = \\sqrt{2}\\,V_{\\mathrm{ac}} - V_{D}',
  output: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
    drop: { tex: 'V_{D}', dimension: 'voltage', meaning: 'drop of the bridge, two diodes', unit: 'V' },
  },
  compute({ rms, drop }) {
    return Math.SQRT2 * rms - drop;
  },
  validity: ['Sinusoidal supply.'],
  source: cite(PUBLICATIONS.jacobTextbook, 'example 9.1, p. 457'),
  examples: [
    {
      source: cite(PUBLICATIONS.jacobTextbook, 'example 9.1, p. 457'),
      inputs: { rms: '28 V', drop: '2 V' },
      printed: '37.6 V',
      kind: 'published',
    },
  ],
});
