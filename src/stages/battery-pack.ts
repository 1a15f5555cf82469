import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { BATTERY_PACK_MODEL } from './models/battery-pack.ts';

export const BATTERY_PACK: StageDeclaration = {
  kind: 'battery-pack',
  name: 'battery pack',
  alsoCalled: ['battery', 'cell pack', 'pack', 'accumulator'],
  short: 'battery pack',
  side: 'none',
  modes: ['lithium-ion', 'lithium-polymer', 'lithium iron phosphate', 'sodium-ion'],
  parameters: [
    { key: 'voltage', dimension: 'voltage', meaning: 'Nominal voltage of the pack' },
    { key: 'charge', dimension: 'charge', meaning: 'Rated charge of the pack' },
    { key: 'energy', dimension: 'energy', meaning: 'Rated energy of the pack' },
    { key: 'over-voltage', dimension: 'voltage', meaning: 'Voltage at which the block shuts down' },
    { key: 'brown-out', dimension: 'voltage', meaning: 'Supply voltage at which the block stops' },
  ],
  roles: ['cell', 'protection-ic', 'load-switch', 'input-fuse', ...COMMON_ROLES],
  shortRoles: {
    switch: 'load-switch',
    fuse: 'input-fuse',
  },
  meaning: 'Cells with their protection. Holds its energy whether plugged in or not, so the cautions for lithium cells apply.',
  model: BATTERY_PACK_MODEL,
};
