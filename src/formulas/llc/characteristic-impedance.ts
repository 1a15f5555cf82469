import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Impedance at which inductance and capacitance are equal: the resistor that damps their ringing. */
export const characteristicImpedance = defineFormula({
  id: 'characteristic-impedance',
  title: 'Characteristic impedance',
  subject: 'llc',
  meaning: 'Impedance at which inductance and capacitance are equal: the resistor that damps their ringing.',
  expression: 'Z = \\sqrt{\\frac{L}{C}}',
  output: { tex: 'Z', dimension: 'resistance', meaning: 'characteristic impedance', unit: 'Ω' },
  inputs: {
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'nF' },
  },
  compute({ inductance, capacitance }) {
    return Math.sqrt(inductance / capacitance);
  },
  validity: ['Losses left out.'],
  source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.3, eq. 4'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.3, eq. 4'),
      inputs: { inductance: '3.8 µH', capacitance: '1.7 nF' },
      printed: '47 Ω',
      kind: 'published',
    },
    { source: workedWith('Python'), inputs: { inductance: '60 µH', capacitance: '27.3 nF' }, printed: '46.88 Ω', kind: 'independent' },
  ],
});
