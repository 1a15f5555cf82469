import type { Role } from './role.ts';

export const INDUCTOR: Role = {
  id: 'inductor',
  name: 'inductor',
  alsoCalled: ['power inductor', 'output inductor', 'coil', 'buck inductor'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance', 'current', 'resistance'],
  plausible: [{ dimension: 'inductance', low: 10e-9, high: 0.1, reason: 'common practice: power inductors of adapters' }],
  meaning: 'Stores energy in each cycle of a DC converter, or smooths an output.',
  example: '10 µH 15 A',
};
