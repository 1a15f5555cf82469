import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Magnetising over resonant inductance: small for a wide gain range, large for little circulating current. */
export const llcInductanceRatio = defineFormula({
  id: 'llc-inductance-ratio',
  title: 'Inductance ratio of an LLC tank',
  subject: 'llc',
  meaning: 'Magnetising over resonant inductance: small for a wide gain range, large for little circulating current.',
  expression: 'L_{n} = \\frac{L_{m}}{L_{r}}',
  output: { tex: 'L_{n}', dimension: 'ratio', meaning: 'magnetising over resonant inductance', unit: '1' },
  inputs: {
    magnetising: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance', unit: 'µH' },
    resonant: { tex: 'L_{r}', dimension: 'inductance', meaning: 'resonant inductance', unit: 'µH' },
  },
  compute({ magnetising, resonant }) {
    return magnetising / resonant;
  },
  validity: ['The resonant inductance must be a choke of its own, or a leakage measured apart.'],
  source: { title: 'Definition', section: 'ratio of two values', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { magnetising: '450 µH', resonant: '75 µH' }, printed: '6.0', kind: 'independent' }],
});
