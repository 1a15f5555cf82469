import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rated output power for each unit of volume; which volume (cased, board, prongs) must stand beside it. */
export const powerDensity = defineFormula({
  id: 'power-density',
  title: 'Power density',
  subject: 'energy',
  meaning: 'Rated output power for each unit of volume; which volume (cased, board, prongs) must stand beside it.',
  expression: 'p = \\frac{P}{V}',
  output: { tex: 'p', dimension: 'power density', meaning: 'power density', unit: 'W/cm³' },
  inputs: {
    power: { tex: 'P', dimension: 'power', meaning: 'rated output power', unit: 'W' },
    volume: { tex: 'V', dimension: 'volume', meaning: 'volume', unit: 'cm³' },
  },
  compute({ power, volume }) {
    return power / volume;
  },
  validity: ['Densities of cased devices and of bare boards are not comparable.', 'The volume must be above zero.'],
  remarks: ['TIDA-01622 is titled 30 W/in³; the two sizes that it prints give 32.1 and 31.0 W/in³.'],
  source: { title: 'Definition', section: 'power over volume', standing: 'common practice' },
  examples: [
    {
      source: cite(PUBLICATIONS.powerIntegrations100W, 'summary: 3.30 × 2.17 × 0.93 in, without enclosure'),
      inputs: { power: '100 W', volume: '6.65973 in³' },
      printed: '15.0 W/in³',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.powerIntegrations45W, 'summary: 1.5 × 1.38 × 1.61 in, in its enclosure'),
      inputs: { power: '45 W', volume: '3.3327 in³' },
      printed: '13.50 W/in³',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.powerIntegrations45W, 'summary: 1.2875 × 1.08 × 1.266 in, board'),
      inputs: { power: '45 W', volume: '1.760373 in³' },
      printed: '25.56 W/in³',
      kind: 'published',
    },
    {
      source: workedWith('js-quantities and mathjs, which agree'),
      inputs: { power: '65 W', volume: '50 cm³' },
      printed: '21.3032 W/in³',
      kind: 'independent',
    },
  ],
});
