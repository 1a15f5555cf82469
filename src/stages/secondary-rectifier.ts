import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { SECONDARY_RECTIFIER_MODEL } from './models/secondary-rectifier.ts';

export const SECONDARY_RECTIFIER: StageDeclaration = {
  kind: 'secondary-rectifier',
  name: 'secondary rectifier',
  alsoCalled: ['synchronous rectification', 'synchronous rectifier', 'output rectifier', 'SR stage', 'secondary rectification'],
  short: null,
  side: 'secondary',
  modes: ['synchronous', 'diode'],
  parameters: [
    { key: 'output', dimension: 'voltage', meaning: 'Output voltage of the block; a range where it follows the offer' },
    { key: 'diode drop', dimension: 'voltage', meaning: 'Forward drop of the rectifier' },
    { key: 'spike', dimension: 'voltage', meaning: 'Voltage spike above the plateau, as seen or assumed' },
    { key: 'frequency', dimension: 'frequency', meaning: 'Switching frequency; a range where it moves' },
  ],
  roles: [
    'synchronous-rectifier',
    'rectifier-diode',
    'output-capacitor',
    'load-switch',
    'protocol-controller',
    'y-capacitor',
    ...COMMON_ROLES,
  ],
  shortRoles: {
    switch: 'synchronous-rectifier',
    rectifier: 'synchronous-rectifier',
    SR: 'synchronous-rectifier',
    diode: 'rectifier-diode',
    capacitor: 'output-capacitor',
  },
  meaning:
    'Rectifies the winding of the isolated converter, where it is worth a block of its own. Its rating must cover the output and the reflected input together.',
  model: SECONDARY_RECTIFIER_MODEL,
};
