import type { Role } from './role.ts';

export const VARISTOR: Role = {
  id: 'varistor',
  name: 'varistor',
  alsoCalled: ['MOV', 'VDR', 'surge varistor'],
  partClass: 'varistor',
  bareNumber: null,
  rates: ['voltage', 'current', 'energy'],
  plausible: [{ dimension: 'voltage', low: 10, high: 1000, reason: 'common practice: varistors from vehicle supplies to 277 V mains' }],
  meaning: 'Clamps surges of the supply by conducting above its voltage.',
  example: '470 V 4.5 kA',
};
