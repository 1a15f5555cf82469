import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Input voltage as a secondary winding shows it while the switch connects the primary to the input. */
export const inputOverTurns = defineFormula({
  id: 'input-over-turns',
  title: 'Input seen from the secondary',
  subject: 'rectifier',
  meaning: 'Input voltage as a secondary winding shows it while the switch connects the primary to the input.',
  expression: 'V_{s} = \\frac{V_{\\mathrm{in}}}{n}',
  output: { tex: 'V_{s}', dimension: 'voltage', meaning: 'voltage of the secondary winding', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the primary', unit: 'V' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  },
  compute({ input, turnsRatio }) {
    return input / turnsRatio;
  },
  validity: ['Leakage left out.', 'The turns ratio must be above zero.'],
  remarks: ['Both the rectifier and the free-wheeling diode of a forward converter block this.'],
  source: { title: 'Ideal transformer', section: 'ratio of voltages', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { input: '390 V', turnsRatio: '6.5' }, printed: '60.0 V', kind: 'independent' }],
});
