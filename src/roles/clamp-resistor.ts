import type { Role } from './role.ts';

export const CLAMP_RESISTOR: Role = {
  id: 'clamp-resistor',
  name: 'clamp resistor',
  alsoCalled: ['RCD resistor', 'snubber clamp resistor'],
  partClass: 'resistor',
  bareNumber: 'resistance',
  rates: ['resistance', 'power'],
  plausible: [{ dimension: 'resistance', low: 10, high: 10e6, reason: 'common practice: clamp resistors of adapters' }],
  meaning: 'Burns what the clamp collects.',
  example: '220 kΩ 1 W',
};
