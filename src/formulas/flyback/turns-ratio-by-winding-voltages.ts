import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Turns ratio of a transformer on the bench: one winding is driven with a small voltage, the other one read. */
export const turnsRatioByWindingVoltages = defineFormula({
  id: 'turns-ratio-by-winding-voltages',
  title: 'Turns ratio by winding voltages',
  subject: 'flyback',
  meaning: 'Turns ratio of a transformer on the bench: one winding is driven with a small voltage, the other one read.',
  expression: 'n = \\frac{V_{p}}{V_{s}}',
  output: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  inputs: {
    primary: { tex: 'V_{p}', dimension: 'voltage', meaning: 'voltage across the primary winding', unit: 'V' },
    secondary: { tex: 'V_{s}', dimension: 'voltage', meaning: 'voltage across the secondary winding, open', unit: 'V' },
  },
  compute({ primary, secondary }) {
    return primary / secondary;
  },
  validity: [
    'Leakage makes it come out too high: by some percent, and in a transformer whose leakage serves as the resonant inductance by tens of percent.',
    'Off the mains, with a signal generator or the frequency of an LCR meter.',
  ],
  source: { title: 'Ideal transformer', section: 'ratio of voltages', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { primary: '12.0 V', secondary: '2.12 V' }, printed: '5.66', kind: 'independent' }],
});
