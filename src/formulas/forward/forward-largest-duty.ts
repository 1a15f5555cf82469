import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Largest duty at which a reset winding still brings the core back within the rest of the cycle. */
export const forwardLargestDuty = defineFormula({
  id: 'forward-largest-duty',
  title: 'Largest duty with a reset winding',
  subject: 'forward',
  meaning: 'Largest duty at which a reset winding still brings the core back within the rest of the cycle.',
  expression: 'D_{\\max} = \\frac{1}{1 + N_{r}/N_{p}} = \\frac{K}{1 + K}',
  output: { tex: 'D_{\\max}', dimension: 'ratio', meaning: 'largest duty', unit: '1' },
  inputs: { resetRatio: { tex: 'K', dimension: 'ratio', meaning: 'primary turns over reset turns', unit: '1' } },
  compute({ resetRatio }) {
    return resetRatio / (1 + resetRatio);
  },
  validity: ['Volt-seconds of the two parts of a cycle are equal; above it the flux climbs from cycle to cycle.'],
  remarks: ['Two switches with two diodes reset the core by the bus itself, which is a ratio of 1 and a largest duty of one half.'],
  source: cite(PUBLICATIONS.forwardTextbook, 'example 16.8'),
  examples: [
    {
      source: cite(PUBLICATIONS.forwardTextbook, 'example 16.8, p. 1015'),
      inputs: { resetRatio: '1.5' },
      printed: '0.6',
      kind: 'published',
    },
    { source: workedWith('bc: 375 V, equal turns'), inputs: { resetRatio: '1' }, printed: '0.500', kind: 'independent' },
  ],
});
