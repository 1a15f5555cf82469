import type { Role } from './role.ts';

export const SHUNT_REFERENCE: Role = {
  id: 'shunt-reference',
  name: 'shunt reference',
  alsoCalled: ['shunt regulator', 'error amplifier', 'adjustable reference'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage'],
  plausible: [],
  meaning: 'Compares the output with its own reference and drives the optocoupler.',
  example: '2.5 V',
};
