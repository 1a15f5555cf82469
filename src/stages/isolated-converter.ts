import type { RoleId } from '../roles/role.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { stageParameters } from './stage-parameters.ts';

/** Roles that any converter across the barrier can hold; what a tank or a bridge adds stands with the block. */
export const ISOLATED_CONVERTER_ROLES: readonly RoleId[] = [
  'transformer',
  'optocoupler',
  'digital-isolator',
  'primary-switch',
  'clamp-switch',
  'clamp-capacitor',
  'clamp-diode',
  'clamp-resistor',
  'synchronous-rectifier',
  'rectifier-diode',
  'output-capacitor',
  'y-capacitor',
  'bulk-capacitor',
  'load-switch',
  'protocol-controller',
  ...COMMON_ROLES,
];

/** What the short words mean in such a converter. */
export const ISOLATED_CONVERTER_SHORT_ROLES: Readonly<Record<string, RoleId>> = {
  switch: 'primary-switch',
  diode: 'rectifier-diode',
  rectifier: 'synchronous-rectifier',
  SR: 'synchronous-rectifier',
  capacitor: 'output-capacitor',
};

/** What an entry can state of any converter that stores its energy in the gap of its transformer. */
export const FLYBACK_PARAMETERS = stageParameters(
  'bus',
  'lowest bus',
  'output',
  'Lm',
  'leakage',
  'frequency',
  'duty',
  'clamp',
  'spike',
  'reflected',
  'peak current',
  'sense threshold',
  'diode drop',
  'power',
  'efficiency',
  'brown-in',
  'brown-out',
);
