import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { MAINS_SIDE_ROLES } from './mains-side.ts';
import { BULK_CAPACITOR_MODEL } from './models/bulk-capacitor.ts';

export const BULK_CAPACITOR: StageDeclaration = {
  kind: 'bulk-capacitor',
  name: 'bulk capacitor',
  alsoCalled: ['bulk store', 'bulk', 'mains capacitor', 'energy store'],
  short: null,
  side: 'primary',
  modes: [],
  parameters: stageParameters('bus', 'hold-up'),
  roles: MAINS_SIDE_ROLES,
  shortRoles: {
    capacitor: 'bulk-capacitor',
    choke: 'differential-choke',
    resistor: 'bleed-resistor',
  },
  meaning:
    'Capacitors behind the rectifier of a design without power-factor correction. They hold the crest of the mains and carry the converter from one crest to the next.',
  model: BULK_CAPACITOR_MODEL,
};
