import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Highest voltage across the primary switch of a flyback, with the spike of the leakage inductance as somebody saw or assumed it. */
export const switchVoltageWithSpike = defineFormula({
  id: 'switch-voltage-with-spike',
  title: 'Voltage of a flyback switch with its spike',
  subject: 'flyback',
  meaning:
    'Highest voltage across the primary switch of a flyback, with the spike of the leakage inductance as somebody saw or assumed it.',
  expression: 'V_{DS} = V_{\\mathrm{off}} + V_{\\mathrm{spike}}',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    plateau: { tex: 'V_{\\mathrm{off}}', dimension: 'voltage', meaning: 'off-state voltage without the spike', unit: 'V' },
    spike: { tex: 'V_{\\mathrm{spike}}', dimension: 'voltage', meaning: 'spike above it', unit: 'V' },
  },
  compute({ plateau, spike }) {
    return plateau + spike;
  },
  validity: ['The spike must be that of the highest line and full load.'],
  source: { title: 'Definition', section: 'plateau and spike', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc, from the plateau of 460 V and the highest voltage of 547 V in AN-4137, appendix'),
      inputs: { plateau: '460 V', spike: '87 V' },
      printed: '547 V',
      kind: 'independent',
    },
  ],
});
