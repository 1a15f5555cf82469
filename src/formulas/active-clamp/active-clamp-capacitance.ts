import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Clamp capacitance whose resonance with the leakage fits the off-time. */
export const activeClampCapacitance = defineFormula({
  id: 'active-clamp-capacitance',
  title: 'Clamp capacitance of an active-clamp flyback',
  subject: 'active-clamp',
  meaning: 'Clamp capacitance whose resonance with the leakage fits the off-time.',
  expression: 'C = \\frac{1}{L_{k}}\\left(\\frac{L_{m}\\,\\hat{I}_{m}}{1.5\\pi\\,n\\,V_{o}}\\right)^{2}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'clamp capacitance', unit: 'nF' },
  inputs: {
    leakage: { tex: 'L_{k}', dimension: 'inductance', meaning: 'leakage inductance, primary', unit: 'µH' },
    inductance: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance', unit: 'µH' },
    peak: { tex: '\\hat{I}_{m}', dimension: 'current', meaning: 'peak magnetising current', unit: 'A' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
  },
  compute({ leakage, inductance, peak, turnsRatio, output }) {
    return ((inductance * peak) / (1.5 * Math.PI * turnsRatio * output)) ** 2 / leakage;
  },
  validity: ['Full load at the lowest bulk voltage.'],
  source: cite(PUBLICATIONS.texasActiveClamp, 'eq. 35'),
  examples: [
    {
      source: workedWith('bc: 2 µH, 100 µH, 3 A, 6, 20.1 V'),
      inputs: { leakage: '2 µH', inductance: '100 µH', peak: '3 A', turnsRatio: '6', output: '20.1 V' },
      printed: '139.33 nF',
      kind: 'independent',
    },
  ],
});
