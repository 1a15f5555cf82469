import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Heat that an rms current makes in a resistance. */
export const resistiveLoss = defineFormula({
  id: 'resistive-loss',
  title: 'Loss in a resistance',
  subject: 'loss',
  meaning: 'Heat that an rms current makes in a resistance.',
  expression: 'P = I^{2} R',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'current, rms', unit: 'A' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'mΩ' },
  },
  compute({ current, resistance }) {
    return current ** 2 * resistance;
  },
  validity: ['The resistance at its own temperature and frequency.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 6, eq. 6'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 6, eq. 6: copper of the choke'),
      inputs: { current: '14.1176 A', resistance: '70 mΩ' },
      printed: '13.95 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 34: series resistance of the bus capacitor'),
      inputs: { current: '6.46849 A', resistance: '236.838 mΩ' },
      printed: '9.91 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 29: sense resistor, 300 W at 92 % and 85 V'),
      inputs: { current: '3.83632 A', resistance: '15 mΩ' },
      printed: '0.22 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 30, p. 12'),
      inputs: { current: '3.857 A', resistance: '40 mΩ' },
      printed: '0.60 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, 'input capacitor: 3 A from 12 V to 5 V'),
      inputs: { current: '1.47902 A', resistance: '3 mΩ' },
      printed: '6.6 mW',
      kind: 'published',
    },
  ],
});
