import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat in the body diode while both switches are off. */
export const deadTimeLoss = defineFormula({
  id: 'dead-time-loss',
  title: 'Loss of the dead time',
  subject: 'loss',
  meaning: 'Heat in the body diode while both switches are off.',
  expression: 'P = V_{F}\\,I\\,t\\,f',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    drop: { tex: 'V_{F}', dimension: 'voltage', meaning: 'drop of the body diode', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
    time: { tex: 't', dimension: 'time', meaning: 'dead time of both edges together', unit: 'ns' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ drop, current, time, frequency }) {
    return drop * current * time * frequency;
  },
  validity: ['GaN drops more than a body diode.'],
  source: cite(PUBLICATIONS.rohmBuckLosses, 'dead time'),
  examples: [
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, 'dead time'),
      inputs: { drop: '0.5 V', current: '3 A', time: '60 ns', frequency: '1 MHz' },
      printed: '90 mW',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { drop: '0.5 V', current: '3 A', time: '60 ns', frequency: '1 MHz' },
      printed: '90.0 mW',
      kind: 'independent',
    },
  ],
});
