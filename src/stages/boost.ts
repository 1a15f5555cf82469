import type { StageDeclaration } from './stage-kind.ts';
import { ONE_INDUCTOR_PARAMETERS, ONE_INDUCTOR_ROLES, ONE_INDUCTOR_SHORT_ROLES } from './one-inductor-converter.ts';
import { BOOST_MODEL } from './models/boost.ts';

export const BOOST: StageDeclaration = {
  kind: 'boost',
  name: 'boost',
  alsoCalled: ['step-up', 'boost converter', 'step-up converter'],
  short: 'boost',
  side: 'secondary',
  modes: ['synchronous', 'asynchronous', 'pulse skipping'],
  parameters: ONE_INDUCTOR_PARAMETERS,
  roles: ONE_INDUCTOR_ROLES,
  shortRoles: ONE_INDUCTOR_SHORT_ROLES,
  meaning: 'Steps a rail or a battery up to what a port has agreed on.',
  model: BOOST_MODEL,
};
