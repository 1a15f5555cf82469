import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { COMMON_ROLES } from './common-roles.ts';

export const WIRELESS_TRANSMITTER: StageDeclaration = {
  kind: 'wireless-transmitter',
  name: 'wireless transmitter',
  alsoCalled: ['wireless charger', 'Qi transmitter', 'transmitter coil', 'inductive transmitter'],
  short: 'wireless transmitter',
  side: 'secondary',
  modes: ['full bridge', 'half bridge'],
  parameters: stageParameters('input', 'frequency', 'coil', 'Cr', 'power', 'efficiency'),
  roles: [
    'transmitter-coil',
    'buck-switch',
    'resonant-capacitor',
    'protocol-controller',
    'input-capacitor',
    'primary-switch',
    ...COMMON_ROLES,
  ],
  shortRoles: {
    switch: 'buck-switch',
    coil: 'transmitter-coil',
    capacitor: 'resonant-capacitor',
  },
  meaning: 'A bridge drives a coil whose field a device above it picks up.',
};
