import type { Role } from './role.ts';

export const RESONANT_INDUCTOR: Role = {
  id: 'resonant-inductor',
  name: 'resonant inductor',
  alsoCalled: ['Lr', 'resonant choke', 'series resonant inductor'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance', 'current'],
  plausible: [{ dimension: 'inductance', low: 10e-9, high: 10e-3, reason: 'common practice: resonant inductances of adapters' }],
  meaning: 'One half of the resonant tank, where it is not the leakage of the transformer.',
  example: '62 µH',
};
