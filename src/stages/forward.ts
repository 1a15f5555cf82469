import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { ISOLATED_CONVERTER_ROLES, ISOLATED_CONVERTER_SHORT_ROLES } from './isolated-converter.ts';
import { FORWARD_MODEL } from './models/forward.ts';

export const FORWARD: StageDeclaration = {
  kind: 'forward',
  name: 'forward',
  alsoCalled: ['forward converter', 'two-switch forward', 'single-switch forward'],
  short: 'forward',
  side: 'barrier',
  modes: ['two-switch', 'single-switch', 'active clamp'],
  parameters: stageParameters(
    'bus',
    'lowest bus',
    'output',
    'L',
    'Lm',
    'frequency',
    'duty',
    'clamp',
    'spike',
    'peak current',
    'sense threshold',
    'ripple current',
    'diode drop',
    'power',
    'efficiency',
  ),
  roles: ISOLATED_CONVERTER_ROLES,
  shortRoles: {
    ...ISOLATED_CONVERTER_SHORT_ROLES,
    inductor: 'inductor',
  },
  meaning:
    'Passes energy through the transformer while the switch is on and smooths it in an output inductor. The core must be reset in each cycle.',
  model: FORWARD_MODEL,
};
