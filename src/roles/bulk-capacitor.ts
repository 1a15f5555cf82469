import type { Role } from './role.ts';

export const BULK_CAPACITOR: Role = {
  id: 'bulk-capacitor',
  name: 'bulk capacitor',
  alsoCalled: ['bulk cap', 'main capacitor', 'primary capacitor', 'high-voltage electrolytic', 'bus capacitor'],
  partClass: 'aluminium electrolytic',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage', 'temperature', 'current'],
  plausible: [
    {
      dimension: 'capacitance',
      low: 0.1e-6,
      high: 2e-3,
      reason: 'common practice: adapters hold 1 to 3 µF a watt or half a microfarad behind a PFC',
    },
    { dimension: 'voltage', low: 100, high: 600, reason: 'common practice: it stands on the rectified mains or on the PFC bus' },
  ],
  meaning: 'Stores the energy of the rectified mains. It can stay charged long after unplugging.',
  example: '120 µF 420 V 105 °C',
};
