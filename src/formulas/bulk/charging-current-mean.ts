import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean of the diode current while it conducts: many times the load current. */
export const chargingCurrentMean = defineFormula({
  id: 'charging-current-mean',
  title: 'Mean charging current of a peak rectifier',
  subject: 'bulk',
  meaning: 'Mean of the diode current while it conducts: many times the load current.',
  expression: 'I_{D} = I_{L}\\left(1 + \\pi\\sqrt{\\frac{2V_{p}}{V_{r}}}\\right)',
  output: { tex: 'I_{D}', dimension: 'current', meaning: 'mean current during conduction', unit: 'mA' },
  inputs: {
    load: { tex: 'I_{L}', dimension: 'current', meaning: 'load current', unit: 'mA' },
    crest: { tex: 'V_{p}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
    ripple: { tex: 'V_{r}', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
  },
  compute({ load, crest, ripple }) {
    return load * (1 + Math.PI * Math.sqrt((2 * crest) / ripple));
  },
  validity: [
    'Half-wave rectifier; for a bridge put four times its ripple here.',
    'The ripple is small against the crest and the source stiff.',
  ],
  source: cite(PUBLICATIONS.sedraTextbook, 'example 3.9, p. 181'),
  examples: [
    {
      source: cite(PUBLICATIONS.sedraTextbook, 'example 3.9, p. 181'),
      inputs: { load: '10 mA', crest: '100 V', ripple: '2 V' },
      printed: '324 mA',
      kind: 'published',
    },
  ],
});
