import type { Role } from './role.ts';

export const PROTECTION_IC: Role = {
  id: 'protection-ic',
  name: 'protection IC',
  alsoCalled: ['battery protection IC', 'cell protection', 'BMS IC', 'pack protector'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [],
  meaning: 'Disconnects a pack that is charged, discharged or loaded too far.',
  example: '4.25 V',
};
