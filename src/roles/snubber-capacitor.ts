import type { Role } from './role.ts';

export const SNUBBER_CAPACITOR: Role = {
  id: 'snubber-capacitor',
  name: 'snubber capacitor',
  alsoCalled: ['damping capacitor'],
  partClass: 'ceramic capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [{ dimension: 'capacitance', low: 1e-12, high: 1e-6, reason: 'common practice: snubber capacitors of adapters' }],
  meaning: 'Slows the edge at a switch or a rectifier.',
  example: '1 nF 1 kV',
};
