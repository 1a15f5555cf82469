import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms of a current that ramps from zero for a share of the period: windings in discontinuous and quasi-resonant operation. */
export const triangleRms = defineFormula({
  id: 'triangle-rms',
  title: 'Rms of a triangular pulse',
  subject: 'flyback',
  meaning: 'Rms of a current that ramps from zero for a share of the period: windings in discontinuous and quasi-resonant operation.',
  expression: 'I = \\hat{I}\\sqrt{\\frac{D}{3}}',
  output: { tex: 'I', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    peak: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
  },
  compute({ peak, duty }) {
    return peak * Math.sqrt(duty / 3);
  },
  validity: ['The current starts from zero.'],
  remarks: [
    'Micrel AN-18 takes the secondary as n times the primary rms, 2.85 A where integration gives 3.79 A, and prints two primary values, 0.22 and 0.19 A.',
    'Bourns e/K1442 leaves out the root of the share of the period. Integration confirms the form that stands here, as does SLUP127.',
  ],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-17'),
  examples: [
    { source: cite(PUBLICATIONS.maximFlyback, 'step 5'), inputs: { peak: '8.4 A', duty: '0.42' }, printed: '3.14 A', kind: 'published' },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-17'),
      inputs: { peak: '46.4 A', duty: '0.517' },
      printed: '19.2 A',
      kind: 'published',
      allowance: { fraction: 0.001, reason: 'the source rounds the root before it multiplies: 19.26 A' },
    },
    {
      source: workedWith('numerical integration of the ramp'),
      inputs: { peak: '0.579 A', duty: '0.48' },
      printed: '0.2316 A',
      kind: 'independent',
    },
  ],
});
