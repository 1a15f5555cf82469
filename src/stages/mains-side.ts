import type { RoleId } from '../roles/role.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { stageParameters } from './stage-parameters.ts';

/** Roles that any block on the mains side can hold: what protects, filters and discharges is found before, in and behind the bridge. */
export const MAINS_SIDE_ROLES: readonly RoleId[] = [
  'input-fuse',
  'ntc-thermistor',
  'varistor',
  'x-capacitor',
  'y-capacitor',
  'common-mode-choke',
  'differential-choke',
  'bleed-resistor',
  'bridge-rectifier',
  'bulk-capacitor',
  'discharge-ic',
  ...COMMON_ROLES,
];

/** What an entry can state of a stage that shapes the input current. */
export const PFC_PARAMETERS = stageParameters(
  'bus',
  'L',
  'frequency',
  'power',
  'efficiency',
  'peak current',
  'sense threshold',
  'ripple current',
  'brown-in',
  'brown-out',
  'over-voltage',
  'hold-up',
);
