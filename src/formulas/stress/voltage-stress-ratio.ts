import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage that a part sees over the voltage it is rated for; above 100 % it is outside its rating. */
export const voltageStressRatio = defineFormula({
  id: 'voltage-stress-ratio',
  title: 'Voltage stress ratio',
  subject: 'stress',
  meaning: 'Voltage that a part sees over the voltage it is rated for; above 100 % it is outside its rating.',
  expression: 'r = \\frac{V}{V_{\\mathrm{rated}}}',
  output: { tex: 'r', dimension: 'ratio', meaning: 'stress ratio', unit: '%' },
  inputs: {
    stress: { tex: 'V', dimension: 'voltage', meaning: 'voltage that the part sees', unit: 'V' },
    rating: { tex: 'V_{\\mathrm{rated}}', dimension: 'voltage', meaning: 'rated voltage', unit: 'V' },
  },
  compute({ stress, rating }) {
    return stress / rating;
  },
  validity: [
    'Both in the same sense: rms against a rating for alternating voltage, peak against a rating for direct voltage.',
    'The rating must be above zero.',
  ],
  source: { title: 'Definition', section: 'stress over rating', standing: 'common practice' },
  examples: [
    {
      source: workedWith('Python: crest of 264 V on a 400 V capacitor'),
      inputs: { stress: '373.3524 V', rating: '400 V' },
      printed: '93.3381 %',
      kind: 'independent',
    },
    {
      source: workedWith('bc, from the numbers of TIDA-01622'),
      inputs: { stress: '484.77 V', rating: '650 V' },
      printed: '74.6 %',
      kind: 'independent',
    },
  ],
});
