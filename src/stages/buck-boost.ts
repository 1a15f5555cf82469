import type { StageDeclaration } from './stage-kind.ts';
import { COMMON_ROLES } from './common-roles.ts';
import { BUCK_BOOST_MODEL } from './models/buck-boost.ts';

export const BUCK_BOOST: StageDeclaration = {
  kind: 'buck-boost',
  name: 'buck-boost',
  alsoCalled: ['four-switch buck-boost', 'H-bridge buck-boost', 'bidirectional buck-boost', '4-switch buck-boost'],
  short: 'buck-boost',
  side: 'secondary',
  modes: ['four-switch', 'bidirectional', 'buck', 'boost'],
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
    { key: 'brown-in', dimension: 'voltage', meaning: 'Supply voltage at which the block starts' },
    { key: 'brown-out', dimension: 'voltage', meaning: 'Supply voltage at which the block stops' },
    { key: 'over-voltage', dimension: 'voltage', meaning: 'Voltage at which the block shuts down' },
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
  meaning:
    'Four switches around one inductor give an output above or below the input. The block of car chargers and power banks, where the input may lie on either side of the output.',
  model: BUCK_BOOST_MODEL,
};
