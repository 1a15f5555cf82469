import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Gain that the tank of a half bridge must have for an output voltage at a bus voltage. */
export const llcWantedGain = defineFormula({
  id: 'llc-wanted-gain',
  title: 'Gain that an output asks for',
  subject: 'llc',
  meaning: 'Gain that the tank of a half bridge must have for an output voltage at a bus voltage.',
  expression: 'M = \\frac{2\\,n\\,(V_{o} + V_{F})}{V_{\\mathrm{in}}}',
  output: { tex: 'M', dimension: 'ratio', meaning: 'gain', unit: '1' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
  },
  compute({ turnsRatio, output, input }) {
    return (2 * turnsRatio * output) / input;
  },
  validity: ['Half bridge; a full bridge needs half of it.'],
  source: { title: 'Definition', section: 'ratio of two values', standing: 'common practice' },
  examples: [
    { source: workedWith('bc'), inputs: { turnsRatio: '8.6', output: '22.4 V', input: '390 V' }, printed: '0.98790', kind: 'independent' },
  ],
});
