import type { Role } from './role.ts';

export const CLAMP_CAPACITOR: Role = {
  id: 'clamp-capacitor',
  name: 'clamp capacitor',
  alsoCalled: ['snubber clamp capacitor', 'active clamp capacitor'],
  partClass: 'capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [{ dimension: 'capacitance', low: 10e-12, high: 10e-6, reason: 'common practice: clamp capacitors of adapters' }],
  meaning: 'Takes the energy of the leakage in each cycle.',
  example: '0.22 µF 250 V X7R',
};
