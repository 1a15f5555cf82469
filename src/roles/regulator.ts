import type { Role } from './role.ts';

export const REGULATOR: Role = {
  id: 'regulator',
  name: 'regulator',
  alsoCalled: ['linear regulator', 'LDO', 'voltage regulator'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [],
  meaning: 'Makes a small supply for control circuits.',
  example: '3.3 V 0.3 A',
};
