import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** What a current pulse asks of a fuse: peak squared, duration, and a factor for the shape. */
export const pulseMeltingIntegral = defineFormula({
  id: 'pulse-melting-integral',
  title: 'Melting integral of a pulse',
  subject: 'protection',
  meaning: 'What a current pulse asks of a fuse: peak squared, duration, and a factor for the shape.',
  expression: 'I^{2}t = k\\,\\hat{I}^{2}\\,t',
  output: { tex: 'I^{2}t', dimension: 'melting integral', meaning: 'melting integral of the pulse', unit: 'A²s' },
  inputs: {
    shape: {
      tex: 'k',
      dimension: 'ratio',
      meaning: 'factor of the shape: 1 step, 1/2 half sine and RC decay, 1/3 triangle, 1/5 parabola',
      unit: '1',
    },
    peak: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak of the pulse', unit: 'A' },
    time: { tex: 't', dimension: 'time', meaning: 'duration, or the time constant of a decay', unit: 'ms' },
  },
  compute({ shape, peak, time }) {
    return shape * peak ** 2 * time;
  },
  validity: ['Pulses of some milliseconds, too short for the fuse to cool.'],
  source: cite(PUBLICATIONS.fusePulseCharts, 'p. 12, chart 1'),
  examples: [
    {
      source: cite(PUBLICATIONS.fusePulseCharts, 'p. 12, chart 1, parabola; numbers of the same guide'),
      inputs: { shape: '0.2', peak: '8 A', time: '4 ms' },
      printed: '0.0512 A²s',
      kind: 'published',
    },
  ],
});
