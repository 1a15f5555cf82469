import type { Role } from './role.ts';

export const SNUBBER_RESISTOR: Role = {
  id: 'snubber-resistor',
  name: 'snubber resistor',
  alsoCalled: ['damping resistor', 'gate resistor'],
  partClass: 'resistor',
  bareNumber: 'resistance',
  rates: ['resistance', 'power'],
  plausible: [{ dimension: 'resistance', low: 0.1, high: 1e6, reason: 'common practice: damping resistors of adapters' }],
  meaning: 'Takes the energy out of ringing.',
  example: '10 Ω',
};
