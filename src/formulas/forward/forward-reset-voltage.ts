import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage across the primary while a reset winding feeds the core's energy back into the input. */
export const forwardResetVoltage = defineFormula({
  id: 'forward-reset-voltage',
  title: 'Reset voltage of a winding',
  subject: 'forward',
  meaning: 'Voltage across the primary while a reset winding feeds the energy of the core back into the input.',
  expression: 'V_{r} = K\\,V_{\\mathrm{in}}',
  output: { tex: 'V_{r}', dimension: 'voltage', meaning: 'voltage across the primary, above the input', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    resetRatio: { tex: 'K', dimension: 'ratio', meaning: 'primary turns over reset turns', unit: '1' },
  },
  compute({ input, resetRatio }) {
    return input * resetRatio;
  },
  validity: ['Leakage between the two windings left out.'],
  source: { title: 'Ideal transformer', section: 'ratio of voltages', standing: 'common practice' },
  examples: [
    { source: workedWith('bc: 325.27 V, 1.5'), inputs: { input: '325.27 V', resetRatio: '1.5' }, printed: '487.9 V', kind: 'independent' },
  ],
});
