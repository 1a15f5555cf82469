import type { Role } from './role.ts';

export const OPTOCOUPLER: Role = {
  id: 'optocoupler',
  name: 'optocoupler',
  alsoCalled: ['opto', 'photocoupler', 'feedback optocoupler', 'opto-isolator'],
  partClass: 'isolator',
  bareNumber: null,
  rates: ['voltage', 'ratio'],
  plausible: [],
  meaning: 'Carries the error signal across the barrier by light.',
  example: '5 kV',
};
