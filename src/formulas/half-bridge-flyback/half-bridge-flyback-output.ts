import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Output voltage from the duty of the upper switch. */
export const halfBridgeFlybackOutput = defineFormula({
  id: 'half-bridge-flyback-output',
  title: 'Output of an asymmetrical half-bridge flyback',
  subject: 'half-bridge-flyback',
  meaning: 'Output voltage from the duty of the upper switch.',
  expression: 'V_{o} = \\frac{D\\,V_{\\mathrm{in}}}{n}',
  output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the upper switch', unit: '1' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  },
  compute({ duty, input, turnsRatio }) {
    return (duty * input) / turnsRatio;
  },
  validity: ['From memory; leakage and losses left out.'],
  source: { title: 'Asymmetrical half-bridge flyback', section: 'steady state, volt-seconds of the transformer', standing: 'memory' },
  examples: [
    {
      source: workedWith('bc: 0.3, 390 V, 5.5'),
      inputs: { duty: '0.3', input: '390 V', turnsRatio: '5.5' },
      printed: '21.27 V',
      kind: 'independent',
    },
  ],
});
