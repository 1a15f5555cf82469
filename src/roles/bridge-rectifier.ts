import type { Role } from './role.ts';

export const BRIDGE_RECTIFIER: Role = {
  id: 'bridge-rectifier',
  name: 'bridge rectifier',
  alsoCalled: ['bridge', 'diode bridge', 'rectifier bridge'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [
    { dimension: 'voltage', low: 20, high: 2000, reason: 'common practice: bridges from vehicle supplies to mains' },
    { dimension: 'current', low: 0.1, high: 60, reason: 'common practice: average current of bridges in adapters' },
  ],
  meaning: 'Four diodes in one case that give both half-waves the same polarity.',
  example: '600 V 4 A',
};
