import type { Role } from './role.ts';

export const SUPPLY_CAPACITOR: Role = {
  id: 'supply-capacitor',
  name: 'supply capacitor',
  alsoCalled: ['VCC capacitor', 'VDD capacitor', 'auxiliary capacitor', 'start-up capacitor'],
  partClass: 'capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [{ dimension: 'capacitance', low: 1e-9, high: 2e-3, reason: 'common practice: supply capacitors of controllers' }],
  meaning: 'Feeds the controller until the auxiliary winding does, and between its pulses.',
  example: '22 µF 50 V',
};
