import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage that the rectifier blocks while the upper switch is on. */
export const halfBridgeFlybackRectifier = defineFormula({
  id: 'half-bridge-flyback-rectifier',
  title: 'Rectifier voltage of an asymmetrical half-bridge flyback',
  subject: 'half-bridge-flyback',
  meaning: 'Voltage that the rectifier blocks while the upper switch is on.',
  expression: 'V_{\\mathrm{rev}} = \\frac{V_{\\mathrm{in}}}{n}',
  output: { tex: 'V_{\\mathrm{rev}}', dimension: 'voltage', meaning: 'reverse voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  },
  compute({ input, turnsRatio }) {
    return input / turnsRatio;
  },
  validity: ['From memory; ringing comes on top.'],
  source: { title: 'Asymmetrical half-bridge flyback', section: 'steady state, volt-seconds of the transformer', standing: 'memory' },
  examples: [
    { source: workedWith('bc: 390 V, 5.5'), inputs: { input: '390 V', turnsRatio: '5.5' }, printed: '70.91 V', kind: 'independent' },
  ],
});
