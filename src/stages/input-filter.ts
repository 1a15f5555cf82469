import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { MAINS_SIDE_ROLES } from './mains-side.ts';
import { INPUT_FILTER_MODEL } from './models/input-filter.ts';

export const INPUT_FILTER: StageDeclaration = {
  kind: 'input-filter',
  name: 'input filter',
  alsoCalled: ['EMI filter', 'EMC filter', 'mains filter', 'line filter', 'AC input'],
  short: null,
  side: 'primary',
  modes: [],
  parameters: stageParameters('standby'),
  roles: MAINS_SIDE_ROLES,
  shortRoles: {
    fuse: 'input-fuse',
    choke: 'common-mode-choke',
    NTC: 'ntc-thermistor',
    MOV: 'varistor',
    resistor: 'bleed-resistor',
  },
  meaning:
    'Fuse, chokes and safety capacitors between the plug and the rectifier. It keeps switching noise off the mains, takes surges, and must let its own charge go after unplugging.',
  model: INPUT_FILTER_MODEL,
};
