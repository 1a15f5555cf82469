import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Rated output power for each unit of mass. */
export const specificPower = defineFormula({
  id: 'specific-power',
  title: 'Specific power',
  subject: 'energy',
  meaning: 'Rated output power for each unit of mass.',
  expression: 'p_{m} = \\frac{P}{m}',
  output: { tex: 'p_{m}', dimension: 'specific power', meaning: 'specific power', unit: 'W/kg' },
  inputs: {
    power: { tex: 'P', dimension: 'power', meaning: 'rated output power', unit: 'W' },
    mass: { tex: 'm', dimension: 'mass', meaning: 'mass', unit: 'g' },
  },
  compute({ power, mass }) {
    return power / mass;
  },
  validity: ['Whether a fixed cable is in the mass must stand beside it.', 'The mass must be above zero.'],
  source: { title: 'Definition', section: 'power over mass', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc'),
      inputs: { power: '100 W', mass: '187 g' },
      printed: '534.76 W/kg',
      kind: 'independent',
    },
  ],
});
