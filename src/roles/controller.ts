import type { Role } from './role.ts';

export const CONTROLLER: Role = {
  id: 'controller',
  name: 'controller',
  alsoCalled: ['PWM controller', 'control IC', 'primary controller', 'combo controller', 'switcher IC'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage', 'frequency'],
  plausible: [],
  meaning: 'Runs the switches of one or more blocks.',
  example: '700 V start-up',
};
