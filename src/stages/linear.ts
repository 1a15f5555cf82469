import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { COMMON_ROLES } from './common-roles.ts';

export const LINEAR: StageDeclaration = {
  kind: 'linear',
  name: 'linear',
  alsoCalled: ['LDO', 'linear regulator', 'low-dropout regulator'],
  short: 'linear',
  side: 'secondary',
  modes: [],
  parameters: stageParameters('input', 'output', 'power'),
  roles: ['regulator', 'input-capacitor', 'output-capacitor', ...COMMON_ROLES],
  shortRoles: {
    switch: 'regulator',
    capacitor: 'output-capacitor',
  },
  meaning: 'Burns the difference between input and output as heat. Used for small supplies inside the device.',
};
