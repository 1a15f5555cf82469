import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms of what the input capacitor of a buck supplies and takes back, with the ripple. */
export const buckInputCapacitorRms = defineFormula({
  id: 'buck-input-capacitor-rms',
  title: 'Input capacitor current of a buck',
  subject: 'buck',
  meaning: 'Rms of what the input capacitor of a buck supplies and takes back, with the ripple.',
  expression: 'I_{C} = \\sqrt{D\\left((1 - D)\\,I_{o}^{2} + \\frac{\\Delta I^{2}}{12}\\right)}',
  output: { tex: 'I_{C}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the upper switch', unit: '1' },
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    ripple: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
  },
  compute({ duty, current, ripple }) {
    return Math.sqrt(duty * ((1 - duty) * current ** 2 + ripple ** 2 / 12));
  },
  turningPoints({ current, ripple }) {
    return { duty: 0.5 + ripple ** 2 / (24 * current ** 2) };
  },
  validity: ['Steady input current, continuous conduction.', 'Largest near a duty of one half.'],
  remarks: [
    'SLUS719E, eq. 16, takes a mean from an rms and so finds 2.37 A where the capacitor carries 3.36 A; the exact form stands here.',
  ],
  source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 18, with the ripple added'),
  examples: [
    {
      source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 18: half of the output current at a duty of one half'),
      inputs: { duty: '0.5', current: '5 A', ripple: '0 A' },
      printed: '2.5 A',
      kind: 'published',
    },
    {
      source: workedWith('numerical integration over one period, to 0.1 %'),
      inputs: { duty: '0.128571', current: '10 A', ripple: '2.6 A' },
      printed: '3.358 A',
      kind: 'independent',
    },
  ],
});
