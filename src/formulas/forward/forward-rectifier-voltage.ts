import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage that either rectifier of a forward converter blocks. */
export const forwardRectifierVoltage = defineFormula({
  id: 'forward-rectifier-voltage',
  title: 'Rectifier voltage of a forward converter',
  subject: 'forward',
  meaning: 'Voltage that either rectifier of a forward converter blocks.',
  expression: 'V_{\\mathrm{rev}} = \\frac{V_{\\mathrm{in}}}{n}',
  output: { tex: 'V_{\\mathrm{rev}}', dimension: 'voltage', meaning: 'reverse voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  },
  compute({ input, turnsRatio }) {
    return input / turnsRatio;
  },
  validity: ['From memory; ringing comes on top.', 'The other rectifier sees the same with a reset winding of equal turns.'],
  source: { title: 'Forward converter', section: 'volt-seconds of the transformer', standing: 'memory' },
  examples: [
    { source: workedWith('bc: 375 V over 8'), inputs: { input: '375 V', turnsRatio: '8' }, printed: '46.88 V', kind: 'independent' },
  ],
});
