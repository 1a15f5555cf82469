import type { Role } from './role.ts';

export const BOOTSTRAP_CAPACITOR: Role = {
  id: 'bootstrap-capacitor',
  name: 'bootstrap capacitor',
  alsoCalled: ['boot capacitor'],
  partClass: 'ceramic capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [{ dimension: 'capacitance', low: 1e-9, high: 100e-6, reason: 'common practice: bootstrap capacitors' }],
  meaning: 'Feeds the driver of a high-side switch.',
  example: '0.1 µF 25 V',
};
