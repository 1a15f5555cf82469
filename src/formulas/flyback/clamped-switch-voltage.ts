import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Highest voltage across the primary switch of a flyback whose clamp holds a known voltage above the input. */
export const clampedSwitchVoltage = defineFormula({
  id: 'clamped-switch-voltage',
  title: 'Clamped voltage of a flyback switch',
  subject: 'flyback',
  meaning: 'Highest voltage across the primary switch of a flyback whose clamp holds a known voltage above the input.',
  expression: 'V_{DS} = \\hat{V}_{\\mathrm{in}} + V_{\\mathrm{clamp}}',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    input: { tex: '\\hat{V}_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    clamp: { tex: 'V_{\\mathrm{clamp}}', dimension: 'voltage', meaning: 'voltage over the clamp, above the input', unit: 'V' },
  },
  compute({ input, clamp }) {
    return input + clamp;
  },
  validity: ['The clamp must be fast enough; what it lets through comes on top.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 31'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 30 and 31, appendix step 11, p. 15'),
      inputs: { input: '375 V', clamp: '172 V' },
      printed: '547 V',
      kind: 'published',
    },
  ],
});
