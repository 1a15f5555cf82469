import type { Role } from './role.ts';

export const Y_CAPACITOR: Role = {
  id: 'y-capacitor',
  name: 'Y capacitor',
  alsoCalled: ['Y1 capacitor', 'Y2 capacitor', 'Y cap', 'barrier capacitor'],
  partClass: 'safety capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [
    {
      dimension: 'capacitance',
      low: 10e-12,
      high: 47e-9,
      reason: 'common practice: larger ones would pass more touch current than any rule accepts',
    },
    { dimension: 'voltage', low: 100, high: 1000, reason: 'common practice: class Y parts are made for mains voltages' },
  ],
  meaning: 'Bridges the barrier to lead common-mode noise home. A short circuit in it would make the output live, hence its class.',
  example: '1 nF Y1 400 VAC',
};
