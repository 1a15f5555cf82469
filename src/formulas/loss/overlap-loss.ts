import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Heat while current and voltage of a switch overlap, for one edge in each cycle. */
export const overlapLoss = defineFormula({
  id: 'overlap-loss',
  title: 'Switching loss from overlap',
  subject: 'loss',
  meaning: 'Heat while current and voltage of a switch overlap, for one edge in each cycle.',
  expression: 'P = \\tfrac{1}{2}\\,V\\,I\\,t\\,f',
  output: { tex: 'P', dimension: 'power', meaning: 'switching loss', unit: 'W' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage switched', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'current switched', unit: 'A' },
    time: { tex: 't', dimension: 'time', meaning: 'time of the edge', unit: 'ns' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ voltage, current, time, frequency }) {
    return 0.5 * voltage * current * time * frequency;
  },
  validity: ['Straight edges, hard switching.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 13, eq. 18 and 19'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 13, turn-on'),
      inputs: { voltage: '400 V', current: '12.71 A', time: '10 ns', frequency: '100 kHz' },
      printed: '2.5 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 13, turn-off'),
      inputs: { voltage: '400 V', current: '12.71 A', time: '13.25 ns', frequency: '100 kHz' },
      printed: '3.4 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, 'both edges together'),
      inputs: { voltage: '12 V', current: '3 A', time: '10 ns', frequency: '1 MHz' },
      printed: '180 mW',
      kind: 'published',
    },
  ],
});
