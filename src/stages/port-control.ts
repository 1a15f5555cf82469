import type { StageDeclaration } from './stage-kind.ts';
import { stageParameters } from './stage-parameters.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { PORT_CONTROL_MODEL } from './models/port-control.ts';

export const PORT_CONTROL: StageDeclaration = {
  kind: 'port-control',
  name: 'port control',
  alsoCalled: ['port block', 'protocol', 'protocol controller', 'port', 'port switch', 'protocol block'],
  short: null,
  side: 'secondary',
  modes: [],
  parameters: stageParameters('output', 'line drop', 'power'),
  roles: ['protocol-controller', 'load-switch', 'output-capacitor', 'input-capacitor', ...COMMON_ROLES],
  shortRoles: {
    switch: 'load-switch',
    capacitor: 'output-capacitor',
  },
  meaning: 'Connector, the controller that speaks with the device, and the switch between the rail and the pins.',
  model: PORT_CONTROL_MODEL,
};
