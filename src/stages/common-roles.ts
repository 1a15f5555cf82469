import type { RoleId } from '../roles/role.ts';

/** Roles that any block can hold: control, sensing, snubbing and mechanics. */
export const COMMON_ROLES: readonly RoleId[] = [
  'controller',
  'gate-driver',
  'current-sense-resistor',
  'supply-capacitor',
  'divider-resistor',
  'shunt-reference',
  'microcontroller',
  'temperature-sensor',
  'connector',
  'heat-spreader',
  'potting',
  'insulation-barrier',
  'inductor',
  'filter-capacitor',
  'snubber-capacitor',
  'snubber-resistor',
  'transient-suppressor',
  'auxiliary-rectifier',
];
