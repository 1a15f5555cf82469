import type { Role } from './role.ts';

export const CURRENT_SENSE_RESISTOR: Role = {
  id: 'current-sense-resistor',
  name: 'current-sense resistor',
  alsoCalled: ['sense resistor', 'shunt', 'current sense', 'shunt resistor'],
  partClass: 'resistor',
  bareNumber: 'resistance',
  rates: ['resistance', 'power', 'ratio'],
  plausible: [
    { dimension: 'resistance', low: 0.1e-3, high: 10, reason: 'common practice: sense resistors drop some tens to hundreds of millivolts' },
  ],
  meaning: 'Turns a current into a small voltage that the controller can see.',
  example: '0.18 Ω 1 % 0.5 W',
};
