import { defineFormula } from '../../values/define-formula.ts';
import { frequencyOfLargestGain } from '../llc-largest-gain-frequency.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Output voltage, referred to the primary, over half of the bus voltage, at a switching frequency. */
export const llcGain = defineFormula({
  id: 'llc-gain',
  title: 'Gain of an LLC tank at a frequency',
  subject: 'llc',
  meaning: 'Output voltage, referred to the primary, over half of the bus voltage, at a switching frequency.',
  expression: 'M = \\frac{L_{n} f_{n}^{2}}{\\left|(L_{n} + 1) f_{n}^{2} - 1 + j\\,(f_{n}^{2} - 1)\\,f_{n}\\,Q_{e}\\,L_{n}\\right|}',
  output: { tex: 'M', dimension: 'ratio', meaning: 'gain', unit: '1' },
  inputs: {
    inductanceRatio: { tex: 'L_{n}', dimension: 'ratio', meaning: 'magnetising over resonant inductance', unit: '1' },
    quality: { tex: 'Q_{e}', dimension: 'ratio', meaning: 'quality factor; 0 without load', unit: '1' },
    frequencyRatio: { tex: 'f_{n}', dimension: 'ratio', meaning: 'switching over resonant frequency', unit: '1' },
  },
  compute({ inductanceRatio, quality, frequencyRatio }) {
    const squared = frequencyRatio ** 2;
    const real = (inductanceRatio + 1) * squared - 1;
    const imaginary = (squared - 1) * frequencyRatio * quality * inductanceRatio;
    return (inductanceRatio * squared) / Math.hypot(real, imaginary);
  },
  turningPoints({ inductanceRatio, quality }) {
    return { frequencyRatio: frequencyOfLargestGain(inductanceRatio, quality) };
  },
  validity: [
    'First-harmonic approximation: good near resonance, low below it.',
    'Resonant choke apart from the transformer; with the leakage as resonant inductance the gain at resonance is above 1.',
  ],
  source: cite(PUBLICATIONS.texasResonantController, 'p. 11, eq. 8'),
  examples: [
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, full load'),
      inputs: { inductanceRatio: '2.41', quality: '0.64', frequencyRatio: '0.6375' },
      printed: '1.400',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, full load'),
      inputs: { inductanceRatio: '3', quality: '0.55', frequencyRatio: '0.6017' },
      printed: '1.400',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, full load'),
      inputs: { inductanceRatio: '3.46', quality: '0.5', frequencyRatio: '0.5707' },
      printed: '1.400',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, full load'),
      inputs: { inductanceRatio: '3.68', quality: '0.48', frequencyRatio: '0.5471' },
      printed: '1.400',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, full load'),
      inputs: { inductanceRatio: '4.21', quality: '0.44', frequencyRatio: '0.5324' },
      printed: '1.400',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, full load'),
      inputs: { inductanceRatio: '4.71', quality: '0.41', frequencyRatio: '0.5077' },
      printed: '1.400',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { inductanceRatio: '2.41', quality: '0', frequencyRatio: '1.379' },
      printed: '0.836',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { inductanceRatio: '3', quality: '0', frequencyRatio: '1.5622' },
      printed: '0.836',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { inductanceRatio: '3.46', quality: '0', frequencyRatio: '1.7698' },
      printed: '0.836',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { inductanceRatio: '3.68', quality: '0', frequencyRatio: '1.9035' },
      printed: '0.836',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { inductanceRatio: '4.21', quality: '0', frequencyRatio: '2.4133' },
      printed: '0.836',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { inductanceRatio: '4.71', quality: '0', frequencyRatio: '3.6928' },
      printed: '0.836',
      kind: 'published',
    },
  ],
});
