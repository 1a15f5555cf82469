import type { Role } from './role.ts';

export const GATE_DRIVER: Role = {
  id: 'gate-driver',
  name: 'gate driver',
  alsoCalled: ['driver', 'half-bridge driver'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [],
  meaning: 'Gives the gates of the switches the current that the controller cannot.',
  example: '600 V 4 A',
};
