import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { BATTERY_PACK_MODEL } from './models/battery-pack.ts';

export const BATTERY_PACK: StageDeclaration = {
  kind: 'battery-pack',
  name: 'battery pack',
  alsoCalled: ['battery', 'cell pack', 'pack', 'accumulator'],
  short: 'battery pack',
  side: 'none',
  modes: ['lithium-ion', 'lithium-polymer', 'lithium iron phosphate', 'sodium-ion'],
  parameters: stageParameters('voltage', 'charge', 'energy', 'over-voltage', 'brown-out'),
  roles: ['cell', 'protection-ic', 'load-switch', 'input-fuse', ...COMMON_ROLES],
  shortRoles: {
    switch: 'load-switch',
    fuse: 'input-fuse',
  },
  meaning: 'Cells with their protection. Holds its energy whether plugged in or not, so the cautions for lithium cells apply.',
  model: BATTERY_PACK_MODEL,
};
