import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Power drawn for each volt-ampere drawn. */
export const powerFactor = defineFormula({
  id: 'power-factor',
  title: 'Power factor',
  subject: 'mains',
  meaning: 'Power drawn for each volt-ampere drawn.',
  expression: '\\lambda = \\frac{P}{V\\,I}',
  output: { tex: '\\lambda', dimension: 'ratio', meaning: 'power factor', unit: '1' },
  inputs: {
    power: { tex: 'P', dimension: 'power', meaning: 'power drawn', unit: 'W' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'supply current, rms', unit: 'A' },
  },
  compute({ power, voltage, current }) {
    return power / (voltage * current);
  },
  validity: ['Voltage and current must be above zero.'],
  source: cite(PUBLICATIONS.circuitTheory, 'power factor'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 20, table 2, 229.9 V row'),
      inputs: { power: '253.4 W', voltage: '229.9 V', current: '1.1304 A' },
      printed: '0.97521',
      kind: 'published',
      allowance: { fraction: 0.0005, reason: 'the readings are printed rounded: 229.9 V and 253.4 W by up to 0.02 % each' },
    },
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 20, table 2, 88.88 V row'),
      inputs: { power: '1278.5 W', voltage: '88.88 V', current: '14.3962 A' },
      printed: '0.9996',
      kind: 'published',
      allowance: { fraction: 0.0005, reason: 'the readings are printed rounded; the meter had more digits' },
    },
  ],
});
