import type { Role } from './role.ts';

export const PROTOCOL_CONTROLLER: Role = {
  id: 'protocol-controller',
  name: 'protocol controller',
  alsoCalled: ['PD controller', 'USB PD controller', 'port controller', 'protocol IC'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage'],
  plausible: [],
  meaning: 'Speaks with the device on the cable and sets the voltage of the port.',
  example: '28 V',
};
