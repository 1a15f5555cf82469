import type { Role } from './role.ts';

export const FILTER_CAPACITOR: Role = {
  id: 'filter-capacitor',
  name: 'filter capacitor',
  alsoCalled: ['film capacitor', 'pulse capacitor', 'PFC input capacitor', 'bypass capacitor', 'decoupling capacitor', 'ceramic capacitor'],
  partClass: 'capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [
    { dimension: 'capacitance', low: 1e-12, high: 100e-6, reason: 'common practice: ceramic and film capacitors for high frequency' },
  ],
  meaning: 'Carries the high-frequency current of a block so that it does not run back along the supply.',
  example: '0.47 µF 500 V X7R',
};
