import type { Source } from '../../values/value.ts';
import { DIRECT_SUPPLY_FUSE, type DeratingPolicy } from './policy.ts';

const OWN_PROPOSAL: Source = {
  title: 'Lines proposed by this site for consumer adapters',
  section: 'judgement, from memory of design practice; configurable',
  standing: 'common practice',
};

const SWITCH_80: Source = {
  title: 'Renesas knowledge base, Power devices (2007)',
  section: 'keep the drain-source voltage within 80 % of its rating; the second line at 90 % is this site’s own',
  standing: 'read',
};

const REVERSE_125: Source = {
  title: 'Power Integrations, design quiz on rectifier ratings',
  section: 'reverse rating of 1.25 times the working reverse voltage, which is 80 %; the second line at 90 % is this site’s own',
  standing: 'read',
};

const FILM_110: Source = {
  title: 'Plastic film capacitors, a maker’s application guide',
  section: 'parts rated for alternating voltage stand up to 110 % of it, variation of the mains included',
  standing: 'read',
  url: 'https://studylib.net/doc/18067514/plastic-film-capacitors',
};

const FUSE_75: Source = {
  title: 'L. Lundy, The fuse-selection checklist, EDN, 26 September 1996',
  section: 'ampere rating: 75 % for UL 248-14 types at 25 °C; IEC 60127 types may carry their rating',
  standing: 'read',
};

/** What consumer adapters are usually held to: the default, mild beside the space and naval policies. */
export const consumerPractice: DeratingPolicy = {
  id: 'consumer-practice',
  title: 'Consumer practice',
  meaning:
    'Comparison lines for mains adapters and chargers. A ratio above 100 % is outside the maker’s own rating; above a line it is thin.',
  rules: [
    {
      partClass: 'transistor',
      quantity: 'voltage',
      limit: 0.8,
      caution: 0.9,
      condition: 'repetitive peak at the highest line',
      source: SWITCH_80,
    },
    { partClass: 'rectifier', quantity: 'voltage', limit: 0.8, caution: 0.9, condition: 'peak reverse voltage', source: REVERSE_125 },
    {
      partClass: 'aluminium electrolytic',
      roles: ['bulk-capacitor'],
      quantity: 'voltage',
      limit: 0.9,
      caution: 0.95,
      source: OWN_PROPOSAL,
    },
    { partClass: 'aluminium electrolytic', quantity: 'voltage', limit: 0.8, caution: 0.9, source: OWN_PROPOSAL },
    { partClass: 'polymer capacitor', quantity: 'voltage', limit: 0.8, caution: 0.9, source: OWN_PROPOSAL },
    { partClass: 'ceramic capacitor', quantity: 'voltage', limit: 0.6, caution: 0.8, source: OWN_PROPOSAL },
    { partClass: 'capacitor', technologies: ['tantalum'], quantity: 'voltage', limit: 0.5, caution: 0.6, source: OWN_PROPOSAL },
    {
      partClass: 'capacitor',
      quantity: 'voltage',
      limit: 0.8,
      caution: 0.9,
      condition: 'kind of capacitor not known',
      source: OWN_PROPOSAL,
    },
    { partClass: 'film capacitor', quantity: 'voltage', limit: 1, source: OWN_PROPOSAL },
    {
      partClass: 'safety capacitor',
      quantity: 'voltage',
      limit: 1.1,
      condition: 'rms at the highest line against the rating for alternating voltage',
      source: FILM_110,
    },
    {
      partClass: 'varistor',
      quantity: 'voltage',
      limit: 1,
      condition: 'rms against the continuous rating for alternating voltage',
      source: OWN_PROPOSAL,
    },
    {
      partClass: 'fuse',
      quantity: 'voltage',
      limit: 1.1,
      condition: 'rms at the highest line; the rated voltage is that of the supply without its tolerance',
      source: OWN_PROPOSAL,
    },
    { partClass: DIRECT_SUPPLY_FUSE, quantity: 'voltage', limit: 1, source: OWN_PROPOSAL },
    { partClass: 'fuse', quantity: 'current', limit: 0.75, caution: 1, source: FUSE_75 },
    { partClass: 'resistor', quantity: 'power', limit: 0.6, caution: 0.8, source: OWN_PROPOSAL },
  ],
};
