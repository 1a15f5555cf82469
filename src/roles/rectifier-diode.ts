import type { Role } from './role.ts';

export const RECTIFIER_DIODE: Role = {
  id: 'rectifier-diode',
  name: 'rectifier diode',
  alsoCalled: ['output diode', 'Schottky diode', 'secondary diode', 'diode', 'rectifier'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [{ dimension: 'voltage', low: 10, high: 2000, reason: 'common practice: from low outputs to mains' }],
  meaning: 'Lets current pass one way only.',
  example: '200 V 4 A',
};
