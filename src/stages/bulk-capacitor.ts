import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { BULK_CAPACITOR_MODEL } from './models/bulk-capacitor.ts';

export const BULK_CAPACITOR: StageDeclaration = {
  kind: 'bulk-capacitor',
  name: 'bulk capacitor',
  alsoCalled: ['bulk store', 'bulk', 'mains capacitor', 'energy store'],
  short: null,
  side: 'primary',
  modes: [],
  parameters: [
    { key: 'bus', dimension: 'voltage', meaning: 'Voltage of the high-voltage bus' },
    { key: 'hold-up', dimension: 'time', meaning: 'Hold-up time that it was designed for' },
  ],
  roles: [
    'input-fuse',
    'ntc-thermistor',
    'varistor',
    'x-capacitor',
    'y-capacitor',
    'common-mode-choke',
    'differential-choke',
    'bleed-resistor',
    'bridge-rectifier',
    'bulk-capacitor',
    'discharge-ic',
    ...COMMON_ROLES,
  ],
  shortRoles: {
    capacitor: 'bulk-capacitor',
    choke: 'differential-choke',
    resistor: 'bleed-resistor',
  },
  meaning:
    'Capacitors behind the rectifier of a design without power-factor correction. They hold the crest of the mains and carry the converter from one crest to the next.',
  model: BULK_CAPACITOR_MODEL,
};
