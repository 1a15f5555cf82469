import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of what is left of a current when another part, such as the mean, is taken off: the ripple current of an output capacitor. */
export const alternatingPart = defineFormula({
  id: 'alternating-part',
  title: 'Alternating part of a current',
  subject: 'flyback',
  meaning: 'Rms of what is left of a current when another part, such as the mean, is taken off: the ripple current of an output capacitor.',
  expression: 'I_{\\mathrm{ac}} = \\sqrt{I^{2} - I_{1}^{2}}',
  output: { tex: 'I_{\\mathrm{ac}}', dimension: 'current', meaning: 'rms current left', unit: 'A' },
  inputs: {
    total: { tex: 'I', dimension: 'current', meaning: 'rms of the whole current', unit: 'A' },
    part: { tex: 'I_{1}', dimension: 'current', meaning: 'mean, or rms of the part taken off', unit: 'A' },
  },
  compute({ total, part }) {
    return Math.sqrt(total ** 2 - part ** 2);
  },
  validity: ['The whole must be at least the part.'],
  remarks: ['U-165 calls the winding current of 14 A the ripple of the capacitor; the ripple is 10.0 A.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 24'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 24, appendix step 10, 3.3 V output'),
      inputs: { total: '3.5057 A', part: '2 A' },
      printed: '2.9 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 24, appendix step 10, 12 V output'),
      inputs: { total: '2.7524 A', part: '1.5 A' },
      printed: '2.3 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13'),
      inputs: { total: '14.7 A', part: '10 A' },
      printed: '10.77 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-14'),
      inputs: { total: '3.17599 A', part: '2.32954 A' },
      printed: '2.16 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-17, secondary'),
      inputs: { total: '19.2 A', part: '12 A' },
      printed: '15 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-18, primary'),
      inputs: { total: '4.65454 A', part: '2.8014 A' },
      printed: '3.71 A',
      kind: 'published',
      allowance: { fraction: 0.001, reason: 'the source works with rounded currents: 3.717 A' },
    },
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 26: diode less twice the line frequency'),
      inputs: { total: '1.13287 A', part: '0.59123 A' },
      printed: '0.966 A',
      kind: 'published',
    },
  ],
});
