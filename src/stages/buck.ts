import type { StageDeclaration } from './stage-kind.ts';
import { ONE_INDUCTOR_PARAMETERS, ONE_INDUCTOR_ROLES, ONE_INDUCTOR_SHORT_ROLES } from './one-inductor-converter.ts';
import { BUCK_MODEL } from './models/buck.ts';

export const BUCK: StageDeclaration = {
  kind: 'buck',
  name: 'buck',
  alsoCalled: ['step-down', 'buck converter', 'synchronous buck', 'step-down converter'],
  short: 'buck',
  side: 'secondary',
  modes: ['synchronous', 'asynchronous', 'pulse skipping'],
  parameters: ONE_INDUCTOR_PARAMETERS,
  roles: ONE_INDUCTOR_ROLES,
  shortRoles: ONE_INDUCTOR_SHORT_ROLES,
  meaning: 'Steps a fixed rail down to what one port has agreed on. One for each port lets every port have its own voltage.',
  model: BUCK_MODEL,
};
