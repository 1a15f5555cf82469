import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { ISOLATED_CONVERTER_ROLES, ISOLATED_CONVERTER_SHORT_ROLES } from './isolated-converter.ts';
import { LLC_HALF_BRIDGE_MODEL } from './models/llc-half-bridge.ts';

export const LLC_HALF_BRIDGE: StageDeclaration = {
  kind: 'llc-half-bridge',
  name: 'LLC half bridge',
  alsoCalled: ['LLC', 'half-bridge LLC', 'LLC converter', 'resonant half bridge', 'half-bridge resonant', 'multi-resonant half bridge'],
  short: 'LLC half bridge',
  side: 'barrier',
  modes: ['below resonance', 'at resonance', 'above resonance', 'burst'],
  parameters: stageParameters(
    'bus',
    'lowest bus',
    'output',
    'Lr',
    'Cr',
    'Lm',
    'Lp',
    'frequency',
    'lowest frequency',
    'current limit',
    'resonance',
    'dead time',
    'peak current',
    'diode drop',
    'power',
    'efficiency',
    'brown-in',
    'brown-out',
  ),
  roles: [...ISOLATED_CONVERTER_ROLES, 'resonant-capacitor', 'resonant-inductor'],
  shortRoles: {
    ...ISOLATED_CONVERTER_SHORT_ROLES,
    'high-side switch': 'primary-switch',
    'low-side switch': 'primary-switch',
  },
  meaning:
    'A half bridge drives a resonant tank of two inductances and a capacitor; output is set by frequency. Switches close at zero volts and see the bus alone; it wants a steady input, so it usually follows a PFC.',
  model: LLC_HALF_BRIDGE_MODEL,
};
