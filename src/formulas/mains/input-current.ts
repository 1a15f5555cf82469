import { defineFormula } from '../../values/define-formula.ts';
import type { Source } from '../../values/value.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Current that a supply draws, from its output power, efficiency and power factor; largest at the lowest input voltage. */
export const inputCurrent = defineFormula({
  id: 'input-current',
  title: 'Input current',
  subject: 'mains',
  meaning: 'Current that a supply draws, from its output power, efficiency and power factor; largest at the lowest input voltage.',
  expression: 'I = \\frac{P}{\\eta\\,\\lambda\\,V}',
  output: { tex: 'I', dimension: 'current', meaning: 'input current, rms', unit: 'A' },
  inputs: {
    power: { tex: 'P', dimension: 'power', meaning: 'output power', unit: 'W' },
    efficiency: { tex: '\\eta', dimension: 'ratio', meaning: 'efficiency', unit: '%' },
    powerFactor: { tex: '\\lambda', dimension: 'ratio', meaning: 'power factor; 1 for a direct supply', unit: '1' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'input voltage, rms or direct', unit: 'V' },
  },
  compute({ power, efficiency, powerFactor, voltage }) {
    return power / (efficiency * powerFactor * voltage);
  },
  validity: ['Efficiency, power factor and voltage must be above zero.'],
  source: powerOne('whole page'),
  examples: [
    {
      source: powerOne('worked example'),
      inputs: { power: '1230 W', efficiency: '0.7', powerFactor: '0.7', voltage: '90 V' },
      printed: '27.9 A',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { power: '65 W', efficiency: '0.88', powerFactor: '0.6', voltage: '90 V' },
      printed: '1.36785 A',
      kind: 'independent',
    },
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 6, eq. 5: efficiency and power factor taken as 1'),
      inputs: { power: '1200 W', efficiency: '1', powerFactor: '1', voltage: '85 V' },
      printed: '14.12 A',
      kind: 'published',
    },
  ],
});

function powerOne(section: string): Source {
  return {
    title: 'Power-One, Input current calculation (2007)',
    section,
    standing: 'read',
    url: 'http://www.power-one.com/technical/input.html',
  };
}
