import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Highest supply voltage to design for: the highest printed voltage with the tolerance of the supply added. */
export const highLine = defineFormula({
  id: 'high-line',
  title: 'High line',
  subject: 'mains',
  meaning: 'Highest supply voltage to design for: the highest printed voltage with the tolerance of the supply added.',
  expression: 'V_{\\mathrm{hi}} = k\\,V_{\\mathrm{printed}}',
  output: { tex: 'V_{\\mathrm{hi}}', dimension: 'voltage', meaning: 'highest supply voltage', unit: 'V' },
  inputs: {
    printed: { tex: 'V_{\\mathrm{printed}}', dimension: 'voltage', meaning: 'highest voltage printed on the nameplate', unit: 'V' },
    factor: { tex: 'k', dimension: 'ratio', meaning: '1 + tolerance of the supply', unit: '1' },
  },
  compute({ printed, factor }) {
    return printed * factor;
  },
  validity: ['Not for nameplates that already include the tolerance, such as 90–264 V.'],
  source: { title: 'Nameplate voltage with 10 % tolerance of the mains', section: 'design practice', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc'),
      inputs: { printed: '240 V', factor: '1.1' },
      printed: '264.0 V',
      kind: 'independent',
    },
  ],
});
