import type { Role } from './role.ts';

export const CONNECTOR: Role = {
  id: 'connector',
  name: 'connector',
  alsoCalled: ['socket', 'receptacle', 'jack', 'plug', 'inlet'],
  partClass: 'mechanical',
  bareNumber: null,
  rates: ['current', 'voltage'],
  plausible: [],
  meaning: 'Where a cable goes in.',
  example: 'USB-C 5 A',
};
