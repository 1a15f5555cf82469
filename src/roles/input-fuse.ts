import type { Role } from './role.ts';

export const INPUT_FUSE: Role = {
  id: 'input-fuse',
  name: 'input fuse',
  alsoCalled: ['fuse', 'mains fuse', 'fusible link'],
  partClass: 'fuse',
  bareNumber: null,
  rates: ['current', 'voltage', 'melting integral'],
  plausible: [
    {
      dimension: 'current',
      low: 0.1,
      high: 50,
      reason: 'common practice: adapters draw between a fraction of an ampere and, in a vehicle, some tens',
    },
  ],
  meaning: 'Opens when the input current stays too high, and must do so at the full supply voltage.',
  example: 'T3.15 A 250 VAC',
};
