import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Power of a direct voltage and current, such as one fixed offer of a port. */
export const electricPower = defineFormula({
  id: 'electric-power',
  title: 'Electric power',
  subject: 'energy',
  meaning: 'Power of a direct voltage and current, such as one fixed offer of a port.',
  expression: 'P = V\\,I',
  output: { tex: 'P', dimension: 'power', meaning: 'power', unit: 'W' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
  },
  compute({ voltage, current }) {
    return voltage * current;
  },
  validity: ['For alternating quantities the product is the apparent power.'],
  source: cite(PUBLICATIONS.circuitTheory, 'power of a direct current'),
  examples: [
    {
      source: {
        title: 'STMicroelectronics STEVAL-ISC002V1, 90 W notebook adapter, product page',
        section: 'output 19 V 4.74 A, 90 W',
        standing: 'read',
      },
      inputs: { voltage: '19 V', current: '4.74 A' },
      printed: '90 W',
      kind: 'published',
    },
    {
      source: workedWith('bc, from the 9 V 2.23 A offer of a 20 W design'),
      inputs: { voltage: '9 V', current: '2.23 A' },
      printed: '20.07 W',
      kind: 'independent',
    },
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, 'supply of the controller'),
      inputs: { voltage: '12 V', current: '1 mA' },
      printed: '12 mW',
      kind: 'published',
    },
  ],
});
