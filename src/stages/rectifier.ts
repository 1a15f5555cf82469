import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { RECTIFIER_MODEL } from './models/rectifier.ts';

export const RECTIFIER: StageDeclaration = {
  kind: 'rectifier',
  name: 'rectifier',
  alsoCalled: ['bridge rectifier', 'bridge', 'mains rectifier', 'diode bridge'],
  short: 'bridge',
  side: 'primary',
  modes: ['full bridge', 'synchronous bridge'],
  parameters: [{ key: 'diode drop', dimension: 'voltage', meaning: 'Forward drop of the rectifier' }],
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
    'rectifier-diode',
    'synchronous-rectifier',
    ...COMMON_ROLES,
  ],
  shortRoles: {
    bridge: 'bridge-rectifier',
    diode: 'rectifier-diode',
    capacitor: 'bulk-capacitor',
    switch: 'synchronous-rectifier',
  },
  meaning: 'Turns the mains into pulses of one polarity. Its diodes see the crest of the mains and carry the whole input current.',
  model: RECTIFIER_MODEL,
};
