import type { Role } from './role.ts';

export const DISCHARGE_IC: Role = {
  id: 'discharge-ic',
  name: 'discharge IC',
  alsoCalled: ['X-capacitor discharge IC', 'X cap discharge IC', 'active discharge'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage'],
  plausible: [],
  meaning: 'Connects the bleed resistors to the X capacitor only when the mains is gone, so they burn nothing in use.',
  example: '700 V',
};
