import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Power that comes out over power that goes in. */
export const powerEfficiency = defineFormula({
  id: 'power-efficiency',
  title: 'Efficiency',
  subject: 'loss',
  meaning: 'Power that comes out over power that goes in.',
  expression: '\\eta = \\frac{P_{o}}{P_{\\mathrm{in}}}',
  output: { tex: '\\eta', dimension: 'ratio', meaning: 'efficiency', unit: '%' },
  inputs: {
    output: { tex: 'P_{o}', dimension: 'power', meaning: 'output power', unit: 'W' },
    input: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'input power', unit: 'W' },
  },
  compute({ output, input }) {
    return output / input;
  },
  validity: ['Both at the same moment and load.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 20, table 2'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 20, table 2, 229.9 V row'),
      inputs: { output: '246.15 W', input: '253.4 W' },
      printed: '97.120 %',
      kind: 'published',
      allowance: { fraction: 0.0004, reason: 'the input power is printed to 0.1 W, which is 0.02 %' },
    },
  ],
});
