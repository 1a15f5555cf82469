import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat from a steady current that flows for a share of the period. */
export const dutyConductionLoss = defineFormula({
  id: 'duty-conduction-loss',
  title: 'Conduction loss at a duty',
  subject: 'loss',
  meaning: 'Heat from a steady current that flows for a share of the period.',
  expression: 'P = D\\,I^{2}\\,k\\,R',
  output: { tex: 'P', dimension: 'power', meaning: 'conduction loss', unit: 'W' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
    current: { tex: 'I', dimension: 'current', meaning: 'current while it flows', unit: 'A' },
    factor: { tex: 'k', dimension: 'ratio', meaning: 'resistance when hot over that at 25 °C', unit: '1' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'mΩ' },
  },
  compute({ duty, current, factor, resistance }) {
    return duty * current ** 2 * factor * resistance;
  },
  validity: ['Ripple left out.'],
  source: cite(PUBLICATIONS.jacobTextbook, 'example 7.4, p. 336'),
  examples: [
    {
      source: cite(PUBLICATIONS.jacobTextbook, 'example 7.4, p. 336'),
      inputs: { duty: '0.42', current: '0.5 A', factor: '1', resistance: '0.6 Ω' },
      printed: '0.063 W',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 23, switch B: 18 V to 12 V'),
      inputs: { duty: '0.333333', current: '5 A', factor: '1.2', resistance: '9 mΩ' },
      printed: '0.09 W',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { duty: '0.42', current: '0.5 A', factor: '1', resistance: '0.6 Ω' },
      printed: '0.0630 W',
      kind: 'independent',
    },
  ],
});
