import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { ONE_INDUCTOR_PARAMETERS, ONE_INDUCTOR_ROLES, ONE_INDUCTOR_SHORT_ROLES } from './one-inductor-converter.ts';
import { BUCK_BOOST_MODEL } from './models/buck-boost.ts';

export const BUCK_BOOST: StageDeclaration = {
  kind: 'buck-boost',
  name: 'buck-boost',
  alsoCalled: ['four-switch buck-boost', 'H-bridge buck-boost', 'bidirectional buck-boost', '4-switch buck-boost'],
  short: 'buck-boost',
  side: 'secondary',
  modes: ['four-switch', 'bidirectional', 'buck', 'boost'],
  parameters: [...ONE_INDUCTOR_PARAMETERS, ...stageParameters('brown-in', 'brown-out', 'over-voltage')],
  roles: ONE_INDUCTOR_ROLES,
  shortRoles: ONE_INDUCTOR_SHORT_ROLES,
  meaning:
    'Four switches around one inductor give an output above or below the input. The block of car chargers and power banks, where the input may lie on either side of the output.',
  model: BUCK_BOOST_MODEL,
};
