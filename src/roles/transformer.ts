import type { Role } from './role.ts';

export const TRANSFORMER: Role = {
  id: 'transformer',
  name: 'transformer',
  alsoCalled: ['main transformer', 'power transformer', 'flyback transformer', 'coupled inductor'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance', 'voltage'],
  plausible: [{ dimension: 'inductance', low: 0.1e-6, high: 0.1, reason: 'common practice: magnetising inductances of adapters' }],
  meaning: 'Carries power across the barrier and sets the voltages on both sides by its turns.',
  example: '35:4:4 480 µH',
};
