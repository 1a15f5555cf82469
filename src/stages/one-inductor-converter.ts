import type { RoleId } from '../roles/role.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { stageParameters } from './stage-parameters.ts';

/** Roles that a converter around one inductor can hold, without a barrier: buck, boost and the four-switch converter that is both. */
export const ONE_INDUCTOR_ROLES: readonly RoleId[] = [
  'buck-switch',
  'input-capacitor',
  'output-capacitor',
  'load-switch',
  'protocol-controller',
  'rectifier-diode',
  'synchronous-rectifier',
  'bootstrap-capacitor',
  'input-fuse',
  ...COMMON_ROLES,
];

/** What the short words mean in such a converter. */
export const ONE_INDUCTOR_SHORT_ROLES: Readonly<Record<string, RoleId>> = {
  switch: 'buck-switch',
  diode: 'rectifier-diode',
  inductor: 'inductor',
  capacitor: 'output-capacitor',
  'high-side switch': 'buck-switch',
  'low-side switch': 'buck-switch',
};

/** What an entry can state of such a converter. */
export const ONE_INDUCTOR_PARAMETERS = stageParameters(
  'input',
  'output',
  'L',
  'frequency',
  'duty',
  'ripple current',
  'peak current',
  'sense threshold',
  'line drop',
  'power',
  'efficiency',
);
