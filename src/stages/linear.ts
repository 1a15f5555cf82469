import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';

export const LINEAR: StageDeclaration = {
  kind: 'linear',
  name: 'linear',
  alsoCalled: ['LDO', 'linear regulator', 'low-dropout regulator'],
  short: 'linear',
  side: 'secondary',
  modes: [],
  parameters: [
    { key: 'input', dimension: 'voltage', meaning: 'Input voltage of the block; a range where it moves' },
    { key: 'output', dimension: 'voltage', meaning: 'Output voltage of the block; a range where it follows the offer' },
    { key: 'power', dimension: 'power', meaning: 'Power that the block is rated to pass on' },
  ],
  roles: ['regulator', 'input-capacitor', 'output-capacitor', ...COMMON_ROLES],
  shortRoles: {
    switch: 'regulator',
    capacitor: 'output-capacitor',
  },
  meaning: 'Burns the difference between input and output as heat. Used for small supplies inside the device.',
};
