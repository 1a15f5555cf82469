import type { Role } from './role.ts';

export const HEAT_SPREADER: Role = {
  id: 'heat-spreader',
  name: 'heat spreader',
  alsoCalled: ['heatsink', 'heat sink', 'copper shield', 'graphite sheet', 'shield'],
  partClass: 'mechanical',
  bareNumber: null,
  rates: ['length', 'area'],
  plausible: [],
  meaning: 'Carries heat from the parts to the case.',
  example: 'aluminium 1.0 mm',
};
