import type { Role } from './role.ts';

export const BYPASS_DIODE: Role = {
  id: 'bypass-diode',
  name: 'bypass diode',
  alsoCalled: ['inrush bypass diode', 'PFC bypass diode'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [{ dimension: 'voltage', low: 200, high: 2000, reason: 'common practice: it stands the PFC bus' }],
  meaning: 'Charges the bus past the PFC inductor at plug-in, so that the inductor never saturates.',
  example: '600 V 3 A',
};
