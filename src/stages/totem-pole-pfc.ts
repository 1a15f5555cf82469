import type { StageDeclaration } from './stage-kind.ts';
import { MAINS_SIDE_ROLES, PFC_PARAMETERS } from './mains-side.ts';
import { TOTEM_POLE_PFC_MODEL } from './models/totem-pole-pfc.ts';

export const TOTEM_POLE_PFC: StageDeclaration = {
  kind: 'totem-pole-pfc',
  name: 'totem-pole PFC',
  alsoCalled: ['bridgeless PFC', 'totem pole', 'bridgeless totem-pole PFC'],
  short: 'totem-pole PFC',
  side: 'primary',
  modes: ['critical conduction', 'continuous conduction'],
  parameters: PFC_PARAMETERS,
  roles: ['pfc-switch', 'pfc-inductor', 'synchronous-rectifier', 'bypass-diode', ...MAINS_SIDE_ROLES],
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
