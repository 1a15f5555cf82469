import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Factor by which the loads of a test are made smaller, where ports together would give more than the supply is rated for. */
export const loadDerating = defineFormula({
  id: 'load-derating',
  title: 'Derating of the loads of several ports',
  subject: 'loss',
  meaning:
    'Rated power of the supply over the sum of what its ports are rated for one by one. Below one, the load of each port in a test of all of them is multiplied by it; one and more leave the loads as they are.',
  expression: 'D = \\frac{P}{\\sum_i V_i I_i}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'derating factor', unit: '1' },
  inputs: {
    total: { tex: 'P', dimension: 'power', meaning: 'rated output power of the supply', unit: 'W' },
    sum: { tex: '\\sum_i V_i I_i', dimension: 'power', meaning: 'sum of the rated output powers of the ports', unit: 'W' },
  },
  compute({ total, sum }) {
    return total / sum;
  },
  validity: ['Each port counts with its rated voltage and current at the setting of the test.'],
  remarks: [
    'At the lowest voltage of a USB PD supply each USB PD port counts with no more than 10 W.',
    '(EU) 2025/2052 derates the loads of ports that share their capacity in the same way (Annex I (19), Table 5, note 3).',
  ],
  source: {
    title: '10 CFR 430 Subpart B Appendix Z (2022)',
    section: '5(b)(1)(iv) and 6(b)(1)(iv), proportional allocation of the loads',
    standing: 'read',
    url: 'https://regulations.justia.com/regulations/fedreg/2022/08/19/2022-15975.html',
  },
  examples: [
    {
      source: workedWith('bc, from 75 W in all and two ports of 60 W (Texas Instruments SLVAFG6, table 5-3)'),
      inputs: { total: '75 W', sum: '120 W' },
      printed: '0.625',
      kind: 'independent',
    },
    {
      source: workedWith('bc, from 100 W in all and ports of 100, 100, 30 and 18 W'),
      inputs: { total: '100 W', sum: '248 W' },
      printed: '0.4032',
      kind: 'independent',
    },
  ],
});
