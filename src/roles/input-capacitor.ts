import type { Role } from './role.ts';

export const INPUT_CAPACITOR: Role = {
  id: 'input-capacitor',
  name: 'input capacitor',
  alsoCalled: ['DC input capacitor', 'input cap'],
  partClass: 'capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [
    { dimension: 'capacitance', low: 1e-9, high: 0.05, reason: 'common practice: input capacitors of DC converters' },
    { dimension: 'voltage', low: 2, high: 200, reason: 'common practice: DC inputs of adapters' },
  ],
  meaning: 'Gives a DC converter its pulsed input current.',
  example: '100 µF 50 V polymer',
};
