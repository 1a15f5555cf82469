import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { DC_INPUT_MODEL } from './models/dc-input.ts';

export const DC_INPUT: StageDeclaration = {
  kind: 'dc-input',
  name: 'DC input',
  alsoCalled: ['vehicle input', 'DC supply input', 'car input', 'low-voltage input'],
  short: null,
  side: 'none',
  modes: ['reverse protected', 'load-dump protected'],
  parameters: stageParameters('input', 'over-voltage', 'brown-in', 'brown-out'),
  roles: [
    'input-fuse',
    'input-capacitor',
    'differential-choke',
    'common-mode-choke',
    'load-switch',
    'rectifier-diode',
    'varistor',
    ...COMMON_ROLES,
  ],
  shortRoles: {
    fuse: 'input-fuse',
    capacitor: 'input-capacitor',
    choke: 'differential-choke',
    switch: 'load-switch',
    diode: 'rectifier-diode',
    TVS: 'transient-suppressor',
  },
  meaning:
    'Entry of a direct-current supply: a vehicle socket, a rail or a cable. It guards against reversed poles and the transients of a vehicle.',
  model: DC_INPUT_MODEL,
};
