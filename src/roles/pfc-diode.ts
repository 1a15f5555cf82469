import type { Role } from './role.ts';

export const PFC_DIODE: Role = {
  id: 'pfc-diode',
  name: 'PFC diode',
  alsoCalled: ['boost diode', 'PFC rectifier'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [
    { dimension: 'voltage', low: 400, high: 1700, reason: 'common practice: it stands the PFC bus' },
    { dimension: 'current', low: 0.5, high: 40, reason: 'common practice: average current ratings of boost diodes' },
  ],
  meaning: 'Lets the current of the PFC inductor into the bus and blocks the bus while the switch is on.',
  example: '650 V 6 A',
};
