import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage that the diode of a reset winding blocks while the switch is on. */
export const forwardResetDiodeVoltage = defineFormula({
  id: 'forward-reset-diode-voltage',
  title: 'Voltage of the reset diode',
  subject: 'forward',
  meaning: 'Voltage that the diode of a reset winding blocks while the switch is on: the input, and the input as the winding shows it.',
  expression: 'V_{D} = V_{\\mathrm{in}}\\left(1 + \\frac{1}{K}\\right)',
  output: { tex: 'V_{D}', dimension: 'voltage', meaning: 'reverse voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    resetRatio: { tex: 'K', dimension: 'ratio', meaning: 'primary turns over reset turns', unit: '1' },
  },
  compute({ input, resetRatio }) {
    return input * (1 + 1 / resetRatio);
  },
  validity: ['Ringing comes on top.'],
  source: { title: 'Forward converter', section: 'sum of the voltages around the reset winding', standing: 'common practice' },
  examples: [
    { source: workedWith('bc: 375 V, 1.5'), inputs: { input: '375 V', resetRatio: '1.5' }, printed: '625.0 V', kind: 'independent' },
  ],
});
