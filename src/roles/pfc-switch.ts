import type { Role } from './role.ts';

export const PFC_SWITCH: Role = {
  id: 'pfc-switch',
  name: 'PFC switch',
  alsoCalled: ['PFC transistor', 'PFC FET', 'PFC MOSFET'],
  partClass: 'transistor',
  bareNumber: null,
  rates: ['voltage', 'resistance', 'current'],
  plausible: [
    { dimension: 'voltage', low: 400, high: 1700, reason: 'common practice: it stands the PFC bus' },
    { dimension: 'resistance', low: 1e-3, high: 10, reason: 'common practice: power switches of adapters lie between 1 mΩ and 10 Ω' },
  ],
  meaning: 'Main switch of the power-factor correction; stands the bus voltage when off.',
  example: '700 V, 140 mΩ',
};
