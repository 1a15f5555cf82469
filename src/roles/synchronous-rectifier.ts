import type { Role } from './role.ts';

export const SYNCHRONOUS_RECTIFIER: Role = {
  id: 'synchronous-rectifier',
  name: 'synchronous rectifier',
  alsoCalled: ['SR', 'SR MOSFET', 'SR switch', 'SR FET'],
  partClass: 'transistor',
  bareNumber: null,
  rates: ['voltage', 'resistance', 'current'],
  plausible: [
    { dimension: 'voltage', low: 20, high: 700, reason: 'common practice: secondary side of adapters, and synchronous bridges' },
    { dimension: 'resistance', low: 1e-3, high: 10, reason: 'common practice: power switches of adapters lie between 1 mΩ and 10 Ω' },
  ],
  meaning: 'A switch in the place of a diode on the secondary side; its drop is lower.',
  example: '60 V, 3.1 mΩ',
};
