import { defineFormula } from '../../values/define-formula.ts';

/** Energy of a device that takes the same power all year, as one that stays in its socket. */
export const yearlyEnergy = defineFormula({
  id: 'yearly-energy',
  title: 'Energy in a year',
  subject: 'energy',
  meaning: 'Energy of a device that takes the same power all year, as one that stays in its socket.',
  expression: 'E = P \\cdot 8760\\,\\mathrm{h}',
  output: { tex: 'E', dimension: 'energy', meaning: 'energy in a year', unit: 'kWh' },
  inputs: { power: { tex: 'P', dimension: 'power', meaning: 'power taken all the time', unit: 'W' } },
  compute({ power }) {
    return power * 8760 * 3600;
  },
  validity: ['365 days of 24 hours.'],
  source: { title: 'Definition', section: 'power times time, 365 days', standing: 'common practice' },
  examples: [
    {
      source: {
        title: 'Formula page of a calculator of standby power',
        section: 'worked example, 15 devices of 5 W',
        standing: 'read',
        url: 'https://theprimecalculator.com/environmental/standby-power/formula',
      },
      inputs: { power: '75 W' },
      printed: '657 kWh',
      kind: 'published',
    },
  ],
});
