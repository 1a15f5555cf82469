import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Output voltage as the primary winding sees it while energy is delivered. */
export const reflectedVoltage = defineFormula({
  id: 'reflected-voltage',
  title: 'Reflected voltage',
  subject: 'flyback',
  meaning: 'Output voltage as the primary winding sees it while energy is delivered.',
  expression: 'V_{R} = n\\,V_{o}',
  output: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
  },
  compute({ turnsRatio, output }) {
    return turnsRatio * output;
  },
  validity: ['Flyback family; the highest offered output voltage is the worst corner.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 12'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 11 and 12: 130.2 V over 12 V is 10.85'),
      inputs: { turnsRatio: '10.85', output: '12 V' },
      printed: '130.2 V',
      kind: 'published',
    },
    {
      source: workedWith('bc, from the turns 22:4 and the 20 V output of TIDA-01622'),
      inputs: { turnsRatio: '5.5', output: '20 V' },
      printed: '110.0 V',
      kind: 'independent',
    },
  ],
});
