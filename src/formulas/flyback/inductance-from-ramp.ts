import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Inductance in which a voltage lets the current rise by an amount in a time. */
export const inductanceFromRamp = defineFormula({
  id: 'inductance-from-ramp',
  title: 'Inductance from a ramp',
  subject: 'flyback',
  meaning: 'Inductance in which a voltage lets the current rise by an amount in a time.',
  expression: 'L = \\frac{V\\,t}{\\Delta I}',
  output: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage across the inductance', unit: 'V' },
    time: { tex: 't', dimension: 'time', meaning: 'time', unit: 'µs' },
    rise: { tex: '\\Delta I', dimension: 'current', meaning: 'rise of the current', unit: 'A' },
  },
  compute({ voltage, time, rise }) {
    return (voltage * time) / rise;
  },
  validity: ['Inductance that does not fall with the current.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-16'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-16: 51.7 % of 10 µs'),
      inputs: { voltage: '5.6 V', time: '5.17 µs', rise: '46.4 A' },
      printed: '0.624 µH',
      kind: 'published',
    },
  ],
});
