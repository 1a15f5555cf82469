import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { FLYBACK_PARAMETERS, ISOLATED_CONVERTER_ROLES, ISOLATED_CONVERTER_SHORT_ROLES } from './isolated-converter.ts';
import { ACTIVE_CLAMP_FLYBACK_MODEL } from './models/active-clamp-flyback.ts';

export const ACTIVE_CLAMP_FLYBACK: StageDeclaration = {
  kind: 'active-clamp-flyback',
  name: 'active-clamp flyback',
  alsoCalled: ['ACF', 'flyback with active clamp'],
  short: 'active-clamp flyback',
  side: 'barrier',
  modes: ['critical conduction', 'transition mode', 'burst', 'complementary', 'non-complementary'],
  parameters: [...FLYBACK_PARAMETERS, ...stageParameters('dead time', 'resonance')],
  roles: [...ISOLATED_CONVERTER_ROLES, 'resonant-capacitor'],
  shortRoles: {
    ...ISOLATED_CONVERTER_SHORT_ROLES,
    clamp: 'clamp-switch',
    'clamp switch': 'clamp-switch',
    'high-side switch': 'clamp-switch',
    'low-side switch': 'primary-switch',
  },
  meaning:
    'A flyback whose clamp is a second switch. The energy of the leakage goes back to the input and swings the main switch to zero volts before it closes, so it can run fast and small.',
  model: ACTIVE_CLAMP_FLYBACK_MODEL,
};
