import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Highest switch voltage if the spike reaches 30 % of the bulk voltage. */
export const switchVoltageBulkAllowance = defineFormula({
  id: 'switch-voltage-bulk-allowance',
  title: 'Switch voltage with 30 % of the bulk voltage on top',
  subject: 'flyback',
  meaning: 'Highest switch voltage if the spike reaches 30 % of the bulk voltage.',
  expression: 'V_{DS} = 1.3\\,V_{\\mathrm{in}} + V_{R}',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  },
  compute({ input, reflected }) {
    return 1.3 * input + reflected;
  },
  validity: ['A rule of thumb for a snubbed flyback.'],
  remarks: [
    'Four papers reckon the same spike in four ways; on one design of 375 V and 85 V they give 502 to 587 V. The sheet shows their range, with each named.',
  ],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 11, solved for the voltage'),
  examples: [
    {
      source: workedWith('bc, on the inputs of AN-4137: 375 V and 85 V'),
      inputs: { input: '375 V', reflected: '85 V' },
      printed: '572.5 V',
      kind: 'independent',
    },
  ],
});
