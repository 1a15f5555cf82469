import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rating that a part needs for a working voltage and a margin. */
export const voltageWithMargin = defineFormula({
  id: 'voltage-with-margin',
  title: 'Voltage with a margin',
  subject: 'flyback',
  meaning: 'Rating that a part needs for a working voltage and a margin.',
  expression: 'V = k\\,V_{w}',
  output: { tex: 'V', dimension: 'voltage', meaning: 'voltage needed', unit: 'V' },
  inputs: {
    margin: { tex: 'k', dimension: 'ratio', meaning: 'margin factor', unit: '1' },
    voltage: { tex: 'V_{w}', dimension: 'voltage', meaning: 'working voltage', unit: 'V' },
  },
  compute({ margin, voltage }) {
    return margin * voltage;
  },
  validity: ['The margin is the choice of whoever states it.'],
  source: cite(PUBLICATIONS.maximFlyback, 'step 6'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 6: rectifier, 24 V and twice 60 V, 25 % on top'),
      inputs: { margin: '1.25', voltage: '144 V' },
      printed: '180.8 V',
      kind: 'published',
      allowance: { fraction: 0.005, reason: 'the source prints 180.8 V where its inputs give 180.0 V' },
    },
  ],
});
