import type { Role } from './role.ts';

export const RESONANT_CAPACITOR: Role = {
  id: 'resonant-capacitor',
  name: 'resonant capacitor',
  alsoCalled: ['Cr', 'tank capacitor', 'series resonant capacitor'],
  partClass: 'film capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage', 'current'],
  plausible: [{ dimension: 'capacitance', low: 100e-12, high: 10e-6, reason: 'common practice: resonant capacitors of adapters' }],
  meaning: 'The other half of the resonant tank; carries the whole resonant current.',
  example: '27 nF 630 V',
};
