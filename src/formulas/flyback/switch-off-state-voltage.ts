import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Voltage across the primary switch while it is off, without the spike of the leakage inductance. */
export const switchOffStateVoltage = defineFormula({
  id: 'switch-off-state-voltage',
  title: 'Off-state voltage of a flyback switch',
  subject: 'flyback',
  meaning: 'Voltage across the primary switch while it is off, without the spike of the leakage inductance.',
  expression: 'V_{DS} = \\hat{V}_{\\mathrm{in}} + V_{R}',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'off-state voltage', unit: 'V' },
  inputs: {
    input: { tex: '\\hat{V}_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  },
  compute({ input, reflected }) {
    return input + reflected;
  },
  validity: ['The leakage spike comes on top; an active clamp keeps it small.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 6'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 6 and appendix step 3, p. 13'),
      inputs: { input: '375 V', reflected: '85 V' },
      printed: '460 V',
      kind: 'published',
    },
  ],
});
