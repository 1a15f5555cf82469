import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Direct voltage on the resonant capacitor. */
export const halfBridgeFlybackCapacitor = defineFormula({
  id: 'half-bridge-flyback-capacitor',
  title: 'Capacitor voltage of an asymmetrical half-bridge flyback',
  subject: 'half-bridge-flyback',
  meaning: 'Direct voltage on the resonant capacitor.',
  expression: 'V_{C} = D\\,V_{\\mathrm{in}}',
  output: { tex: 'V_{C}', dimension: 'voltage', meaning: 'voltage of the resonant capacitor', unit: 'V' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the upper switch', unit: '1' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ duty, input }) {
    return duty * input;
  },
  validity: ['From memory; the alternating part comes on top.'],
  source: { title: 'Asymmetrical half-bridge flyback', section: 'steady state, volt-seconds of the transformer', standing: 'memory' },
  examples: [{ source: workedWith('bc: 0.3, 390 V'), inputs: { duty: '0.3', input: '390 V' }, printed: '117.0 V', kind: 'independent' }],
});
