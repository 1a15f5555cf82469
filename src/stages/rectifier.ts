import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { MAINS_SIDE_ROLES } from './mains-side.ts';
import { RECTIFIER_MODEL } from './models/rectifier.ts';

export const RECTIFIER: StageDeclaration = {
  kind: 'rectifier',
  name: 'rectifier',
  alsoCalled: ['bridge rectifier', 'bridge', 'mains rectifier', 'diode bridge'],
  short: 'bridge',
  side: 'primary',
  modes: ['full bridge', 'synchronous bridge'],
  parameters: stageParameters('diode drop'),
  roles: ['rectifier-diode', 'synchronous-rectifier', ...MAINS_SIDE_ROLES],
  shortRoles: {
    bridge: 'bridge-rectifier',
    diode: 'rectifier-diode',
    capacitor: 'bulk-capacitor',
    switch: 'synchronous-rectifier',
  },
  meaning: 'Turns the mains into pulses of one polarity. Its diodes see the crest of the mains and carry the whole input current.',
  model: RECTIFIER_MODEL,
};
