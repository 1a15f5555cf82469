import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { FLYBACK_PARAMETERS, ISOLATED_CONVERTER_ROLES, ISOLATED_CONVERTER_SHORT_ROLES } from './isolated-converter.ts';
import { ASYMMETRICAL_HALF_BRIDGE_MODEL } from './models/asymmetrical-half-bridge-flyback.ts';

export const ASYMMETRICAL_HALF_BRIDGE_FLYBACK: StageDeclaration = {
  kind: 'asymmetrical-half-bridge-flyback',
  name: 'asymmetrical half-bridge flyback',
  alsoCalled: ['AHB', 'AHB flyback', 'hybrid flyback', 'asymmetric half-bridge flyback'],
  short: 'asymmetrical half bridge',
  side: 'barrier',
  modes: ['zero-voltage resonant valley', 'critical conduction', 'burst'],
  parameters: [...FLYBACK_PARAMETERS, ...stageParameters('Lr', 'Cr', 'resonance', 'dead time')],
  roles: [...ISOLATED_CONVERTER_ROLES, 'resonant-capacitor', 'resonant-inductor'],
  shortRoles: {
    ...ISOLATED_CONVERTER_SHORT_ROLES,
    clamp: 'clamp-diode',
    'high-side switch': 'primary-switch',
    'low-side switch': 'primary-switch',
  },
  meaning:
    'A half bridge with a resonant capacitor drives a flyback transformer. Switches see the bus and no more, and the wide range of output voltage of a flyback stays.',
  model: ASYMMETRICAL_HALF_BRIDGE_MODEL,
};
