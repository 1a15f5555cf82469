import type { Role } from './role.ts';

export const DIFFERENTIAL_CHOKE: Role = {
  id: 'differential-choke',
  name: 'differential choke',
  alsoCalled: ['DM choke', 'differential-mode choke', 'line choke', 'pi filter inductor', 'filter choke'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance', 'current', 'resistance'],
  plausible: [{ dimension: 'inductance', low: 0.1e-6, high: 0.05, reason: 'common practice: differential chokes of adapters' }],
  meaning: 'Stops noise between the two lines, often together with a capacitor on each side.',
  example: '220 µH 1.2 A',
};
