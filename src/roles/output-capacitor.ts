import type { Role } from './role.ts';

export const OUTPUT_CAPACITOR: Role = {
  id: 'output-capacitor',
  name: 'output capacitor',
  alsoCalled: ['secondary capacitor', 'output cap', 'polymer output capacitor'],
  partClass: 'polymer capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage', 'current', 'temperature'],
  plausible: [
    { dimension: 'capacitance', low: 1e-9, high: 0.05, reason: 'common practice: output capacitors of adapters' },
    { dimension: 'voltage', low: 2, high: 100, reason: 'common practice: outputs of adapters end at 48 V' },
  ],
  meaning: 'Holds the output voltage between the pulses of the rectifier.',
  example: '2 × 470 µF 25 V polymer',
};
