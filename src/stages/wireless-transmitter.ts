import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';

export const WIRELESS_TRANSMITTER: StageDeclaration = {
  kind: 'wireless-transmitter',
  name: 'wireless transmitter',
  alsoCalled: ['wireless charger', 'Qi transmitter', 'transmitter coil', 'inductive transmitter'],
  short: 'wireless transmitter',
  side: 'secondary',
  modes: ['full bridge', 'half bridge'],
  parameters: [
    { key: 'input', dimension: 'voltage', meaning: 'Input voltage of the block; a range where it moves' },
    { key: 'frequency', dimension: 'frequency', meaning: 'Switching frequency; a range where it moves' },
    { key: 'coil', dimension: 'inductance', meaning: 'Inductance of the transmitter coil' },
    { key: 'Cr', dimension: 'capacitance', meaning: 'Resonant capacitance' },
    { key: 'power', dimension: 'power', meaning: 'Power that the block is rated to pass on' },
    { key: 'efficiency', dimension: 'ratio', meaning: 'Efficiency of the block alone at full load' },
  ],
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
