import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Voltage that a synchronous rectifier or diode on the secondary side blocks while the primary switch is on. */
export const rectifierReverseVoltage = defineFormula({
  id: 'rectifier-reverse-voltage',
  title: 'Reverse voltage of a flyback rectifier',
  subject: 'rectifier',
  meaning: 'Voltage that a synchronous rectifier or diode on the secondary side blocks while the primary switch is on.',
  expression: 'V_{\\mathrm{rev}} = \\frac{\\hat{V}_{\\mathrm{in}}}{n} + V_{o}',
  output: { tex: 'V_{\\mathrm{rev}}', dimension: 'voltage', meaning: 'reverse voltage', unit: 'V' },
  inputs: {
    input: { tex: '\\hat{V}_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
  },
  compute({ input, turnsRatio, output }) {
    return input / turnsRatio + output;
  },
  validity: ['Flyback family; ringing comes on top.', 'The turns ratio must be above zero.'],
  source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.1, eq. 1'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.1, p. 24: 265 V, 3.5, 20 V'),
      inputs: { input: '374.767 V', turnsRatio: '3.5', output: '20 V' },
      printed: '127 V',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 14: 265 V, 10, 12 V'),
      inputs: { input: '374.767 V', turnsRatio: '10', output: '12 V' },
      printed: '49.5 V',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 18, appendix step 8, 3.3 V output: 85 V over 3.8 V'),
      inputs: { input: '375 V', turnsRatio: '22.3684', output: '3.3 V' },
      printed: '20 V',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 18, appendix step 8, 12 V output: 85 V over 13.2 V'),
      inputs: { input: '375 V', turnsRatio: '6.43939', output: '12 V' },
      printed: '70 V',
      kind: 'published',
    },
  ],
});
