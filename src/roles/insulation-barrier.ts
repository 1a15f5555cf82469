import type { Role } from './role.ts';

export const INSULATION_BARRIER: Role = {
  id: 'insulation-barrier',
  name: 'insulation barrier',
  alsoCalled: ['insulating sheet', 'barrier sheet', 'insulation sheet', 'isolation barrier'],
  partClass: 'mechanical',
  bareNumber: null,
  rates: ['length', 'voltage'],
  plausible: [],
  meaning: 'Sheet or wall that keeps primary and secondary apart where distance alone does not.',
  example: '0.4 mm',
};
