import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Power at the end of a cable, from voltage and current at the receptacle: what the cable turns to heat is taken off. */
export const powerAfterCable = defineFormula({
  id: 'power-after-cable',
  title: 'Power after the cable',
  subject: 'cable',
  meaning: 'Power at the end of a cable, from voltage and current at the receptacle: what the cable turns to heat is taken off.',
  expression: 'P_{o} = V I - I^{2} R',
  output: { tex: 'P_{o}', dimension: 'power', meaning: 'power at the end of the cable', unit: 'W' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage at the receptacle', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'output current', unit: 'A' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance of the cable there and back', unit: 'Ω' },
  },
  compute({ voltage, current, resistance }) {
    return voltage * current - current ** 2 * resistance;
  },
  validity: ['0.130 Ω there and back for a port of up to 3 A, 0.100 Ω above, where the regulation asks for it.'],
  remarks: ['The regulation prints its equation as a picture; this form is the sense of the words around it.'],
  source: {
    title: 'Commission Regulation (EU) 2025/2052 (OJ L, 24.11.2025)',
    section: 'Annex II, Table 8; Annex IV, point 3(a)',
    standing: 'read',
    url: 'http://data.europa.eu/eli/reg/2025/2052/oj',
  },
  examples: [
    {
      source: workedWith('bc'),
      inputs: { voltage: '20 V', current: '3 A', resistance: '0.13 Ω' },
      printed: '58.83 W',
      kind: 'independent',
    },
  ],
});
