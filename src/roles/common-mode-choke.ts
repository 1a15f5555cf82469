import type { Role } from './role.ts';

export const COMMON_MODE_CHOKE: Role = {
  id: 'common-mode-choke',
  name: 'common-mode choke',
  alsoCalled: ['CM choke', 'CMC', 'common-mode inductor'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance', 'current', 'resistance'],
  plausible: [{ dimension: 'inductance', low: 1e-6, high: 0.2, reason: 'common practice: common-mode chokes of adapters' }],
  meaning: 'Two windings on one core: stops noise that runs the same way on both lines and lets the supply current pass.',
  example: '20 mH 0.5 A',
};
