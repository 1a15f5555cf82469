import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of a current that flows for a share of the period and rises about its middle: windings and switches in continuous conduction. */
export const trapezoidRms = defineFormula({
  id: 'trapezoid-rms',
  title: 'Rms of a trapezoidal pulse',
  subject: 'flyback',
  meaning:
    'Rms of a current that flows for a share of the period and rises about its middle: windings and switches in continuous conduction.',
  expression: 'I = \\sqrt{D\\left(I_{m}^{2} + \\frac{\\Delta I^{2}}{12}\\right)}',
  output: { tex: 'I', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
    middle: { tex: 'I_{m}', dimension: 'current', meaning: 'current in the middle of the ramp', unit: 'A' },
    rise: { tex: '\\Delta I', dimension: 'current', meaning: 'rise of the current', unit: 'A' },
  },
  compute({ duty, middle, rise }) {
    return Math.sqrt(duty * (middle ** 2 + rise ** 2 / 12));
  },
  validity: ['The current ramps in a straight line.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 11, rewritten'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 11, appendix step 4, p. 13'),
      inputs: { duty: '0.48', middle: '1.51456 A', rise: '0.99889 A' },
      printed: '1.07 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.3, eq. 19'),
      inputs: { duty: '0.627', middle: '1.22090 A', rise: '0.285 A' },
      printed: '0.97 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeFlyback, 'p. 8: secondary, five times 5.161 A less half of 2.58 A'),
      inputs: { duty: '0.5167', middle: '19.355 A', rise: '12.9 A' },
      printed: '14 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13, secondary, ripple left out'),
      inputs: { duty: '0.462', middle: '21.65 A', rise: '0 A' },
      printed: '14.7 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-14, primary, ripple left out'),
      inputs: { duty: '0.538', middle: '4.33 A', rise: '0 A' },
      printed: '3.18 A',
      kind: 'published',
    },
  ],
});
