import type { Role } from './role.ts';

export const DIGITAL_ISOLATOR: Role = {
  id: 'digital-isolator',
  name: 'digital isolator',
  alsoCalled: ['isolator', 'capacitive isolator', 'signal isolator'],
  partClass: 'isolator',
  bareNumber: null,
  rates: ['voltage'],
  plausible: [],
  meaning: 'Carries digital signals across the barrier or up to a floating switch.',
  example: '3 kV',
};
