import type { Role } from './role.ts';

export const BUCK_SWITCH: Role = {
  id: 'buck-switch',
  name: 'buck switch',
  alsoCalled: ['DC-DC switch', 'converter switch', 'buck MOSFET', 'buck-boost switch', 'boost switch'],
  partClass: 'transistor',
  bareNumber: null,
  rates: ['voltage', 'resistance', 'current'],
  plausible: [
    { dimension: 'voltage', low: 10, high: 200, reason: 'common practice: DC converters of adapters' },
    { dimension: 'resistance', low: 1e-3, high: 10, reason: 'common practice: power switches of adapters lie between 1 mΩ and 10 Ω' },
  ],
  meaning: 'Switch of a DC converter; sees its input or its output, whichever is higher.',
  example: '40 V, 6 mΩ',
};
