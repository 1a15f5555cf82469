import type { Role } from './role.ts';

export const CLAMP_DIODE: Role = {
  id: 'clamp-diode',
  name: 'clamp diode',
  alsoCalled: ['snubber diode', 'RCD diode'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [{ dimension: 'voltage', low: 20, high: 2000, reason: 'common practice: it stands what the primary switch stands' }],
  meaning: 'Leads the spike of the leakage into the clamp.',
  example: '1 kV 1 A',
};
