import type { Role } from './role.ts';

export const CELL: Role = {
  id: 'cell',
  name: 'cell',
  alsoCalled: ['battery cell', 'lithium cell', '18650 cell', '21700 cell', 'pouch cell'],
  partClass: 'cell',
  bareNumber: null,
  rates: ['charge', 'voltage', 'energy'],
  plausible: [
    { dimension: 'voltage', low: 0.5, high: 5, reason: 'common practice: a single electrochemical cell' },
    { dimension: 'charge', low: 36, high: 4e5, reason: 'common practice: single cells of power banks, 10 mAh to 110 Ah' },
  ],
  meaning: 'Stores the energy of a power bank.',
  example: '5000 mAh 3.6 V',
};
