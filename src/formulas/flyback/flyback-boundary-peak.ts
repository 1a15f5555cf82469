import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak of the primary current of a quasi-resonant flyback that turns on again at once: no inductance needed. */
export const flybackBoundaryPeak = defineFormula({
  id: 'flyback-boundary-peak',
  title: 'Peak primary current at the boundary',
  subject: 'flyback',
  meaning: 'Peak of the primary current of a quasi-resonant flyback that turns on again at once: no inductance needed.',
  expression: '\\hat{I}_{p} = \\frac{2 P_{\\mathrm{in}}\\,(V_{\\mathrm{in}} + V_{R})}{V_{\\mathrm{in}}\\,V_{R}}',
  output: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn: output power over efficiency', unit: 'W' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    reflected: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  },
  compute({ power, input, reflected }) {
    return (2 * power * (input + reflected)) / (input * reflected);
  },
  validity: ['Boundary of continuous conduction; the wait for the valley makes the peak a few per cent larger.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-16 and 5-17, joined'),
  examples: [
    {
      source: workedWith('bc: 67 W, 92.16 V, 85 V'),
      inputs: { power: '67 W', input: '92.16 V', reflected: '85 V' },
      printed: '3.0305 A',
      kind: 'independent',
    },
  ],
});
