import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Capacitance that a marked value stands for, once the tolerance that the marking leaves out is put in. */
export const capacitanceWithTolerance = defineFormula({
  id: 'capacitance-with-tolerance',
  title: 'Capacitance with its tolerance',
  subject: 'capacitor',
  meaning: 'Capacitance that a marked value stands for, once the tolerance that the marking leaves out is put in.',
  expression: 'C = k\\,C_{\\mathrm{marked}}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  inputs: {
    marked: { tex: 'C_{\\mathrm{marked}}', dimension: 'capacitance', meaning: 'marked capacitance', unit: 'µF' },
    factor: { tex: 'k', dimension: 'ratio', meaning: '1 ± tolerance', unit: '1' },
  },
  compute({ marked, factor }) {
    return marked * factor;
  },
  validity: [],
  source: { title: 'Definition', section: 'tolerance of a marked value', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc'),
      inputs: { marked: '120 µF', factor: '1.2' },
      printed: '144 µF',
      kind: 'independent',
    },
  ],
});
