import type { Role } from './role.ts';

export const PFC_INDUCTOR: Role = {
  id: 'pfc-inductor',
  name: 'PFC inductor',
  alsoCalled: ['PFC choke', 'boost inductor', 'PFC coil'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance', 'current', 'resistance'],
  plausible: [{ dimension: 'inductance', low: 1e-6, high: 20e-3, reason: 'common practice: boost inductors of adapters' }],
  meaning: 'Stores energy while the PFC switch is on and gives it to the bus while it is off.',
  example: '210 µH 4.5 A',
};
