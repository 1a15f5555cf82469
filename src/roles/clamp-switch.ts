import type { Role } from './role.ts';

export const CLAMP_SWITCH: Role = {
  id: 'clamp-switch',
  name: 'clamp switch',
  alsoCalled: ['active clamp switch', 'high-side clamp switch'],
  partClass: 'transistor',
  bareNumber: null,
  rates: ['voltage', 'resistance', 'current'],
  plausible: [
    { dimension: 'voltage', low: 20, high: 1700, reason: 'common practice: it sees the same voltage as the primary switch' },
    { dimension: 'resistance', low: 1e-3, high: 10, reason: 'common practice: power switches of adapters lie between 1 mΩ and 10 Ω' },
  ],
  meaning: 'Switches the clamp capacitor so that the energy of the leakage goes back.',
  example: '650 V, 300 mΩ',
};
