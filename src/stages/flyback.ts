import type { StageDeclaration } from './stage-kind.ts';
import { FLYBACK_PARAMETERS, ISOLATED_CONVERTER_ROLES, ISOLATED_CONVERTER_SHORT_ROLES } from './isolated-converter.ts';
import { FLYBACK_MODEL } from './models/flyback.ts';

export const FLYBACK: StageDeclaration = {
  kind: 'flyback',
  name: 'flyback',
  alsoCalled: ['QR flyback', 'quasi-resonant flyback', 'DCM flyback', 'CCM flyback', 'flyback converter', 'PSR flyback'],
  short: 'flyback',
  side: 'barrier',
  modes: [
    'quasi-resonant',
    'discontinuous conduction',
    'continuous conduction',
    'critical conduction',
    'valley switching',
    'primary-side regulated',
  ],
  parameters: FLYBACK_PARAMETERS,
  roles: [...ISOLATED_CONVERTER_ROLES, 'bridge-rectifier'],
  shortRoles: {
    ...ISOLATED_CONVERTER_SHORT_ROLES,
    clamp: 'clamp-diode',
  },
  meaning:
    'Stores energy in the gap of its transformer while the switch is on and gives it to the output while it is off. Few parts, any output voltage; the switch must stand the bus, the reflected output and the spike of the leakage.',
  model: FLYBACK_MODEL,
};
