import type { Role } from './role.ts';

export const TRANSIENT_SUPPRESSOR: Role = {
  id: 'transient-suppressor',
  name: 'transient suppressor',
  alsoCalled: ['TVS', 'TVS diode', 'suppressor diode', 'clamping diode'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'power'],
  plausible: [{ dimension: 'voltage', low: 2, high: 1000, reason: 'common practice: from data lines to mains' }],
  meaning: 'Clamps short overvoltages on a rail, a pin or a vehicle supply.',
  example: '33 V 600 W',
};
