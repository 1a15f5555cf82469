import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** How far an output voltage falls from one line voltage to a lower one, as a share of what it is at the higher one. */
export const lineRegulation = defineFormula({
  id: 'line-regulation',
  title: 'Line regulation',
  subject: 'measurement',
  meaning:
    'How far an output voltage falls from one line voltage to a lower one, as a share of what it is at the higher one. Negative where it rises.',
  expression: '\\frac{V_{H} - V_{N}}{V_{H}}',
  output: { tex: 'r_{N}', dimension: 'ratio', meaning: 'line regulation', unit: '%' },
  inputs: {
    high: { tex: 'V_{H}', dimension: 'voltage', meaning: 'output voltage at the higher line voltage', unit: 'V' },
    low: { tex: 'V_{N}', dimension: 'voltage', meaning: 'output voltage at the lower line voltage', unit: 'V' },
  },
  compute({ high, low }) {
    return (high - low) / high;
  },
  validity: ['Both at one load, one setting and one place of measurement; the line voltages are said beside it.'],
  source: cite(PUBLICATIONS.instrumentationTextbook, 'chapter 16, laboratory power supplies: source effect and line regulation'),
  examples: [
    {
      source: cite(PUBLICATIONS.instrumentationTextbook, 'example 16-1, p. 423: 12 V, and 11.95 V with the line 10 % lower'),
      inputs: { high: '12 V', low: '11.95 V' },
      printed: '0.42 %',
      kind: 'published',
    },
  ],
});
