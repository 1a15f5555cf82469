import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage of the switch of a forward converter with a reset winding. */
export const forwardSwitchVoltage = defineFormula({
  id: 'forward-switch-voltage',
  title: 'Switch voltage of a forward converter',
  subject: 'forward',
  meaning: 'Voltage of the switch of a forward converter with a reset winding.',
  expression: 'V_{DS} = V_{\\mathrm{in}}\\left(1 + \\frac{N_{p}}{N_{r}}\\right)',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    resetRatio: { tex: '\\frac{N_{p}}{N_{r}}', dimension: 'ratio', meaning: 'primary turns over reset turns', unit: '1' },
  },
  compute({ input, resetRatio }) {
    return input * (1 + resetRatio);
  },
  validity: ['From memory; leakage spike on top.', 'With two switches and two diodes each switch sees the input voltage alone.'],
  source: { title: 'Forward converter', section: 'volt-seconds of the reset winding', standing: 'memory' },
  examples: [
    {
      source: workedWith('bc: 375 V, reset winding of equal turns'),
      inputs: { input: '375 V', resetRatio: '1' },
      printed: '750.0 V',
      kind: 'independent',
    },
  ],
});
