import type { Role } from './role.ts';

export const MICROCONTROLLER: Role = {
  id: 'microcontroller',
  name: 'microcontroller',
  alsoCalled: ['MCU', 'supervisor', 'power management controller'],
  partClass: 'integrated circuit',
  bareNumber: null,
  rates: ['voltage'],
  plausible: [],
  meaning: 'Divides power between the ports and watches temperatures.',
  example: '5 V',
};
