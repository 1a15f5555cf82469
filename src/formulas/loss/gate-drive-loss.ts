import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat in the driver from charging a gate in each cycle. */
export const gateDriveLoss = defineFormula({
  id: 'gate-drive-loss',
  title: 'Loss of driving a gate',
  subject: 'loss',
  meaning: 'Heat in the driver from charging a gate in each cycle.',
  expression: 'P = V_{g}\\,Q_{g}\\,f',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    voltage: { tex: 'V_{g}', dimension: 'voltage', meaning: 'drive voltage', unit: 'V' },
    charge: { tex: 'Q_{g}', dimension: 'charge', meaning: 'gate charge', unit: 'nC' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ voltage, charge, frequency }) {
    return voltage * charge * frequency;
  },
  validity: ['The gate is charged and discharged fully.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 13, eq. 24'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 13, eq. 24'),
      inputs: { voltage: '12 V', charge: '93 nC', frequency: '100 kHz' },
      printed: '0.11 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, 'both gates'),
      inputs: { voltage: '5 V', charge: '2 nC', frequency: '1 MHz' },
      printed: '10 mW',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { voltage: '12 V', charge: '93 nC', frequency: '100 kHz' },
      printed: '0.1116 W',
      kind: 'independent',
    },
  ],
});
