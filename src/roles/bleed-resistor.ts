import type { Role } from './role.ts';

export const BLEED_RESISTOR: Role = {
  id: 'bleed-resistor',
  name: 'bleed resistor',
  alsoCalled: ['bleeder', 'discharge resistor', 'bleeder resistor'],
  partClass: 'resistor',
  bareNumber: 'resistance',
  rates: ['resistance', 'power', 'voltage'],
  plausible: [
    { dimension: 'resistance', low: 1e3, high: 100e6, reason: 'common practice: less would burn power, more would not discharge in time' },
  ],
  meaning: 'Takes the charge out of a capacitor after unplugging.',
  example: '2 × 1 MΩ',
};
