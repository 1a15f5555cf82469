import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { BOOST_MODEL } from './models/boost.ts';

export const BOOST: StageDeclaration = {
  kind: 'boost',
  name: 'boost',
  alsoCalled: ['step-up', 'boost converter', 'step-up converter'],
  short: 'boost',
  side: 'secondary',
  modes: ['synchronous', 'asynchronous', 'pulse skipping'],
  parameters: [
    { key: 'input', dimension: 'voltage', meaning: 'Input voltage of the block; a range where it moves' },
    { key: 'output', dimension: 'voltage', meaning: 'Output voltage of the block; a range where it follows the offer' },
    { key: 'L', dimension: 'inductance', meaning: 'Inductance of the power inductor' },
    { key: 'frequency', dimension: 'frequency', meaning: 'Switching frequency; a range where it moves' },
    { key: 'duty', dimension: 'ratio', meaning: 'Duty cycle of the main switch at the corner that is named; largest where none is' },
    { key: 'ripple current', dimension: 'current', meaning: 'Peak-to-peak ripple current in the inductor' },
    { key: 'peak current', dimension: 'current', meaning: 'Peak current in the main switch at full load' },
    { key: 'sense threshold', dimension: 'voltage', meaning: 'Voltage across the sense resistor at which the controller limits' },
    { key: 'line drop', dimension: 'resistance', meaning: 'Line-drop compensation: volts added per ampere' },
    { key: 'power', dimension: 'power', meaning: 'Power that the block is rated to pass on' },
    { key: 'efficiency', dimension: 'ratio', meaning: 'Efficiency of the block alone at full load' },
  ],
  roles: [
    'buck-switch',
    'input-capacitor',
    'output-capacitor',
    'load-switch',
    'protocol-controller',
    'rectifier-diode',
    'synchronous-rectifier',
    'bootstrap-capacitor',
    'input-fuse',
    ...COMMON_ROLES,
  ],
  shortRoles: {
    switch: 'buck-switch',
    diode: 'rectifier-diode',
    inductor: 'inductor',
    capacitor: 'output-capacitor',
    'high-side switch': 'buck-switch',
    'low-side switch': 'buck-switch',
  },
  meaning: 'Steps a rail or a battery up to what a port has agreed on.',
  model: BOOST_MODEL,
};
