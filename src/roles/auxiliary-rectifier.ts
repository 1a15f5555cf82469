import type { Role } from './role.ts';

export const AUXILIARY_RECTIFIER: Role = {
  id: 'auxiliary-rectifier',
  name: 'auxiliary rectifier',
  alsoCalled: ['auxiliary diode', 'VCC diode', 'bias diode'],
  partClass: 'rectifier',
  bareNumber: null,
  rates: ['voltage', 'current'],
  plausible: [],
  meaning: 'Rectifies the auxiliary winding that feeds the controller.',
  example: '200 V 0.5 A',
};
