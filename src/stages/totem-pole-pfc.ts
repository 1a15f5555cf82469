import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { TOTEM_POLE_PFC_MODEL } from './models/totem-pole-pfc.ts';

export const TOTEM_POLE_PFC: StageDeclaration = {
  kind: 'totem-pole-pfc',
  name: 'totem-pole PFC',
  alsoCalled: ['bridgeless PFC', 'totem pole', 'bridgeless totem-pole PFC'],
  short: 'totem-pole PFC',
  side: 'primary',
  modes: ['critical conduction', 'continuous conduction'],
  parameters: [
    { key: 'bus', dimension: 'voltage', meaning: 'Voltage of the high-voltage bus' },
    { key: 'L', dimension: 'inductance', meaning: 'Inductance of the power inductor' },
    { key: 'frequency', dimension: 'frequency', meaning: 'Switching frequency; a range where it moves' },
    { key: 'power', dimension: 'power', meaning: 'Power that the block is rated to pass on' },
    { key: 'efficiency', dimension: 'ratio', meaning: 'Efficiency of the block alone at full load' },
    { key: 'peak current', dimension: 'current', meaning: 'Peak current in the main switch at full load' },
    { key: 'sense threshold', dimension: 'voltage', meaning: 'Voltage across the sense resistor at which the controller limits' },
    { key: 'ripple current', dimension: 'current', meaning: 'Peak-to-peak ripple current in the inductor' },
    { key: 'brown-in', dimension: 'voltage', meaning: 'Supply voltage at which the block starts' },
    { key: 'brown-out', dimension: 'voltage', meaning: 'Supply voltage at which the block stops' },
    { key: 'over-voltage', dimension: 'voltage', meaning: 'Voltage at which the block shuts down' },
    { key: 'hold-up', dimension: 'time', meaning: 'Hold-up time that it was designed for' },
  ],
  roles: [
    'pfc-switch',
    'pfc-inductor',
    'synchronous-rectifier',
    'bypass-diode',
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
    switch: 'pfc-switch',
    inductor: 'pfc-inductor',
    choke: 'pfc-inductor',
    capacitor: 'bulk-capacitor',
    diode: 'bypass-diode',
  },
  meaning:
    'A boost converter without a diode bridge: one leg switches fast, the other turns over with the mains. It saves the drop of two diodes and needs switches without stored charge.',
  model: TOTEM_POLE_PFC_MODEL,
};
