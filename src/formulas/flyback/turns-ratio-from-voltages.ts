import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Turns ratio from a reflected and an output voltage, as seen on the switch node. */
export const turnsRatioFromVoltages = defineFormula({
  id: 'turns-ratio-from-voltages',
  title: 'Turns ratio from voltages',
  subject: 'flyback',
  meaning: 'Turns ratio from a reflected and an output voltage, as seen on the switch node.',
  expression: 'n = \\frac{V_{R}}{V_{o}}',
  output: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  inputs: {
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
  },
  compute({ reflected, output }) {
    return reflected / output;
  },
  validity: ['The output voltage must be the one at which the reflected voltage was seen.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 12'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 12'),
      inputs: { reflected: '130.24 V', output: '12 V' },
      printed: '10.85',
      kind: 'published',
    },
  ],
});
