import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak of the primary current from the energy of each cycle; also quasi-resonant operation, the wait for the valley left out. */
export const flybackDcmPeakFromPower = defineFormula({
  id: 'flyback-dcm-peak-from-power',
  title: 'Peak primary current in discontinuous conduction',
  subject: 'flyback',
  meaning: 'Peak of the primary current from the energy of each cycle; also quasi-resonant operation, the wait for the valley left out.',
  expression: '\\hat{I}_{p} = \\sqrt{\\frac{2 P_{\\mathrm{in}}}{L_{p}\\,f}}',
  output: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn: output power over efficiency', unit: 'W' },
    inductance: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ power, inductance, frequency }) {
    return Math.sqrt((2 * power) / (inductance * frequency));
  },
  validity: ['Discontinuous conduction or its boundary.'],
  source: cite(PUBLICATIONS.maximFlyback, 'steps 3 and 4 joined'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 4'),
      inputs: { power: '30 W', inductance: '6.8 µH', frequency: '125 kHz' },
      printed: '8.4 A',
      kind: 'published',
    },
    {
      source: workedWith('Python'),
      inputs: { power: '30 W', inductance: '6.8 µH', frequency: '125 kHz' },
      printed: '8.402 A',
      kind: 'independent',
    },
  ],
});
