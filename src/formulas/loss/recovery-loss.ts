import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat from the recovery or capacitive charge of a diode at each turn-off; it lands in the switch. */
export const recoveryLoss = defineFormula({
  id: 'recovery-loss',
  title: 'Loss from the charge of a diode',
  subject: 'loss',
  meaning: 'Heat from the recovery or capacitive charge of a diode at each turn-off; it lands in the switch.',
  expression: 'P = \\tfrac{1}{2}\\,V\\,Q\\,f',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage blocked', unit: 'V' },
    charge: { tex: 'Q', dimension: 'charge', meaning: 'charge', unit: 'nC' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ voltage, charge, frequency }) {
    return 0.5 * voltage * charge * frequency;
  },
  validity: ['Hard turn-off.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 28'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 28'),
      inputs: { voltage: '400 V', charge: '23 nC', frequency: '100 kHz' },
      printed: '0.46 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, '0.3 A for 25 ns'),
      inputs: { voltage: '12 V', charge: '7.5 nC', frequency: '1 MHz' },
      printed: '45 mW',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { voltage: '400 V', charge: '23 nC', frequency: '100 kHz' },
      printed: '0.4600 W',
      kind: 'independent',
    },
  ],
});
