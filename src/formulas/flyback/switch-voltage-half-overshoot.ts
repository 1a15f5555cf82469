import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Highest switch voltage if the spike reaches half of the reflected voltage. */
export const switchVoltageHalfOvershoot = defineFormula({
  id: 'switch-voltage-half-overshoot',
  title: 'Switch voltage with half of the reflected voltage on top',
  subject: 'flyback',
  meaning: 'Highest switch voltage if the spike reaches half of the reflected voltage.',
  expression: 'V_{DS} = V_{\\mathrm{in}} + 1.5\\,V_{R}',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  },
  compute({ input, reflected }) {
    return input + 1.5 * reflected;
  },
  validity: ['A rule of thumb for a snubbed flyback.'],
  remarks: [
    'Four papers reckon the same spike in four ways; on one design of 375 V and 85 V they give 502 to 587 V. The sheet shows their range, with each named.',
  ],
  source: cite(PUBLICATIONS.texasFlybackOvershoot, 'overshoot of 50 % of the reflected voltage'),
  examples: [
    {
      source: workedWith('bc, on the inputs of AN-4137: 375 V and 85 V'),
      inputs: { input: '375 V', reflected: '85 V' },
      printed: '502.5 V',
      kind: 'independent',
    },
  ],
});
