import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Characteristic impedance of the tank over the load it sees: full load has the largest. */
export const llcQualityFactor = defineFormula({
  id: 'llc-quality-factor',
  title: 'Quality factor of an LLC tank',
  subject: 'llc',
  meaning: 'Characteristic impedance of the tank over the load it sees: full load has the largest.',
  expression: 'Q_{e} = \\frac{\\sqrt{L_{r}/C_{r}}}{R_{e}}',
  output: { tex: 'Q_{e}', dimension: 'ratio', meaning: 'quality factor', unit: '1' },
  inputs: {
    inductance: { tex: 'L_{r}', dimension: 'inductance', meaning: 'resonant inductance', unit: 'µH' },
    capacitance: { tex: 'C_{r}', dimension: 'capacitance', meaning: 'resonant capacitance', unit: 'nF' },
    load: { tex: 'R_{e}', dimension: 'resistance', meaning: 'load as the tank sees it', unit: 'Ω' },
  },
  compute({ inductance, capacitance, load }) {
    return Math.sqrt(inductance / capacitance) / load;
  },
  validity: ['First-harmonic approximation.'],
  remarks: ['AN-4151, table 3, prints 0.36 where its own parts give 0.372.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, step 4'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, full load'),
      inputs: { inductance: '60 µH', capacitance: '27.3 nF', load: '99.603 Ω' },
      printed: '0.47',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, 110 % load'),
      inputs: { inductance: '60 µH', capacitance: '27.3 nF', load: '90.548 Ω' },
      printed: '0.52',
      kind: 'published',
    },
  ],
});
