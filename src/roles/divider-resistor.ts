import type { Role } from './role.ts';

export const DIVIDER_RESISTOR: Role = {
  id: 'divider-resistor',
  name: 'divider resistor',
  alsoCalled: ['feedback resistor', 'sense divider', 'voltage divider'],
  partClass: 'resistor',
  bareNumber: 'resistance',
  rates: ['resistance', 'ratio'],
  plausible: [{ dimension: 'resistance', low: 1, high: 100e6, reason: 'common practice: dividers of adapters' }],
  meaning: 'Brings a voltage down to what the controller can see.',
  example: '80.6 kΩ 1 %',
};
