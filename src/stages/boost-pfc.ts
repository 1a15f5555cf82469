import type { StageDeclaration } from './stage-kind.ts';
import { MAINS_SIDE_ROLES, PFC_PARAMETERS } from './mains-side.ts';
import { BOOST_PFC_MODEL } from './models/boost-pfc.ts';

export const BOOST_PFC: StageDeclaration = {
  kind: 'boost-pfc',
  name: 'boost PFC',
  alsoCalled: ['PFC', 'boost power-factor correction', 'PFC boost', 'power factor correction'],
  short: 'boost PFC',
  side: 'primary',
  modes: ['critical conduction', 'continuous conduction', 'discontinuous conduction', 'transition mode', 'mixed conduction', 'synchronous'],
  parameters: PFC_PARAMETERS,
  roles: ['pfc-switch', 'pfc-diode', 'pfc-inductor', 'bypass-diode', 'synchronous-rectifier', ...MAINS_SIDE_ROLES],
  shortRoles: {
    switch: 'pfc-switch',
    diode: 'pfc-diode',
    inductor: 'pfc-inductor',
    choke: 'pfc-inductor',
    capacitor: 'bulk-capacitor',
  },
  meaning:
    'A boost converter that draws a sine of current from the mains and charges the bus to some 390 V. Chosen above 75 W, where harmonics of the input current are limited; it also gives the next block a steady input.',
  model: BOOST_PFC_MODEL,
};
