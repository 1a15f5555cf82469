import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Resistance at which a current makes a voltage: a series resistance allowed, an inrush limiter needed. */
export const resistanceForDrop = defineFormula({
  id: 'resistance-for-drop',
  title: 'Resistance for a drop',
  subject: 'sense',
  meaning: 'Resistance at which a current makes a voltage: a series resistance allowed, an inrush limiter needed.',
  expression: 'R = \\frac{V}{I}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'mΩ' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage', unit: 'mV' },
    current: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
  },
  compute({ voltage, current }) {
    return voltage / current;
  },
  validity: ['Resistive.'],
  source: cite(PUBLICATIONS.circuitTheory, 'Ohm’s law'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 14: series resistance of the input capacitor'),
      inputs: { voltage: '0.2 V', current: '11.3 A' },
      printed: '17.7 mΩ',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasRectifierController, '8.2.2.1, eq. 2: 50 mV at half of 14 A'),
      inputs: { voltage: '50 mV', current: '7 A' },
      printed: '7 mΩ',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasPrimaryRegulated, '8.2.2.9: 37 mV at 13 times 0.713 A'),
      inputs: { voltage: '37.037 mV', current: '9.269 A' },
      printed: '4.05 mΩ',
      kind: 'published',
      allowance: { fraction: 0.013, reason: 'the source rounds the split of the ripple' },
    },
    {
      source: cite(PUBLICATIONS.amethermInrush, 'worked example'),
      inputs: { voltage: '746.592 V', current: '30 A' },
      printed: '25 Ω',
      kind: 'published',
    },
  ],
});
