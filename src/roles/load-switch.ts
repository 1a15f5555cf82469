import type { Role } from './role.ts';

export const LOAD_SWITCH: Role = {
  id: 'load-switch',
  name: 'load switch',
  alsoCalled: ['VBUS switch', 'port switch', 'output switch', 'blocking switch'],
  partClass: 'transistor',
  bareNumber: null,
  rates: ['voltage', 'resistance', 'current'],
  plausible: [
    { dimension: 'voltage', low: 5, high: 200, reason: 'common practice: ports and packs' },
    { dimension: 'resistance', low: 1e-3, high: 10, reason: 'common practice: power switches of adapters lie between 1 mΩ and 10 Ω' },
  ],
  meaning: 'Connects the rail with the pins only after the port has agreed on a voltage.',
  example: '30 V, 6.3 mΩ',
};
