import type { Role } from './role.ts';

export const PRIMARY_SWITCH: Role = {
  id: 'primary-switch',
  name: 'primary switch',
  alsoCalled: ['main switch', 'primary transistor', 'primary MOSFET', 'primary FET', 'half-bridge switch', 'GaN power IC'],
  partClass: 'transistor',
  bareNumber: null,
  rates: ['voltage', 'resistance', 'current'],
  plausible: [
    { dimension: 'voltage', low: 20, high: 1700, reason: 'common practice: from vehicle supplies to mains with reflected voltage' },
    { dimension: 'resistance', low: 1e-3, high: 10, reason: 'common practice: power switches of adapters lie between 1 mΩ and 10 Ω' },
  ],
  meaning: 'Connects the transformer to the bus; its rating must cover bus, reflected output and spike, or the bus alone in a half bridge.',
  example: '650 V, 210 mΩ',
};
