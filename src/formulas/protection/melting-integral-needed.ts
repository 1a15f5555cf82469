import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Melting integral of a fuse that survives a number of such pulses. */
export const meltingIntegralNeeded = defineFormula({
  id: 'melting-integral-needed',
  title: 'Melting integral needed',
  subject: 'protection',
  meaning: 'Melting integral of a fuse that survives a number of such pulses.',
  expression: 'I^{2}t_{n} = \\frac{I^{2}t}{F}',
  output: { tex: 'I^{2}t_{n}', dimension: 'melting integral', meaning: 'melting integral needed', unit: 'A²s' },
  inputs: {
    pulse: { tex: 'I^{2}t', dimension: 'melting integral', meaning: 'melting integral of the pulse', unit: 'A²s' },
    share: { tex: 'F', dimension: 'ratio', meaning: 'share of the melting integral that the pulse may use', unit: '%' },
  },
  compute({ pulse, share }) {
    return pulse / share;
  },
  validity: ['Pulses far enough apart for the fuse to cool.'],
  remarks: ['Shares differ by series: 22 % (Littelfuse) or 35 % (Matsuo JHC) for 100 000 pulses.'],
  source: cite(PUBLICATIONS.fusePulseCharts, 'p. 12, chart 2'),
  examples: [
    {
      source: cite(PUBLICATIONS.fusePulseCharts, 'p. 12, chart 2, 100 000 pulses'),
      inputs: { pulse: '0.0512 A²s', share: '0.22' },
      printed: '0.2327 A²s',
      kind: 'published',
    },
  ],
});
