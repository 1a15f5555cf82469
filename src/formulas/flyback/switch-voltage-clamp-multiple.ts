import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Highest switch voltage if the clamp stands at 2.5 times the reflected voltage. */
export const switchVoltageClampMultiple = defineFormula({
  id: 'switch-voltage-clamp-multiple',
  title: 'Switch voltage with a clamp at 2.5 times the reflected voltage',
  subject: 'flyback',
  meaning: 'Highest switch voltage if the clamp stands at 2.5 times the reflected voltage.',
  expression: 'V_{DS} = V_{\\mathrm{in}} + 2.5\\,V_{R}',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  },
  compute({ input, reflected }) {
    return input + 2.5 * reflected;
  },
  validity: ['An RCD clamp designed to that multiple.'],
  remarks: [
    'Four papers reckon the same spike in four ways; on one design of 375 V and 85 V they give 502 to 587 V. The sheet shows their range, with each named.',
  ],
  source: cite(PUBLICATIONS.maximFlyback, 'step 7'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 7: 24.7 V over 2'),
      inputs: { input: '60 V', reflected: '12.35 V' },
      printed: '90.78 V',
      kind: 'published',
      allowance: { fraction: 0.0011, reason: 'the source prints 90.78 V where its inputs give 90.88 V' },
    },
    {
      source: workedWith('bc, on the inputs of AN-4137: 375 V and 85 V'),
      inputs: { input: '375 V', reflected: '85 V' },
      printed: '587.5 V',
      kind: 'independent',
    },
  ],
});
