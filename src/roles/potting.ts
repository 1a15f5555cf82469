import type { Role } from './role.ts';

export const POTTING: Role = {
  id: 'potting',
  name: 'potting',
  alsoCalled: ['thermal compound', 'filler', 'encapsulation', 'silicone'],
  partClass: 'mechanical',
  bareNumber: null,
  rates: ['mass'],
  plausible: [],
  meaning: 'Fills the room between parts and case; carries heat and damps sound.',
  example: 'silicone 40 g',
};
