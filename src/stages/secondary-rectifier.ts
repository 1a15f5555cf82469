import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { SECONDARY_RECTIFIER_MODEL } from './models/secondary-rectifier.ts';

export const SECONDARY_RECTIFIER: StageDeclaration = {
  kind: 'secondary-rectifier',
  name: 'secondary rectifier',
  alsoCalled: ['synchronous rectification', 'synchronous rectifier', 'output rectifier', 'SR stage', 'secondary rectification'],
  short: null,
  side: 'secondary',
  modes: ['synchronous', 'diode'],
  parameters: stageParameters('output', 'diode drop', 'spike', 'frequency'),
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
