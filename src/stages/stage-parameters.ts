import type { StageParameter } from './stage-kind.ts';

/** Every word by which an entry states something of a topology block: one word means one thing in all blocks. */
const VOCABULARY = {
  bus: { dimension: 'voltage', meaning: 'Voltage of the high-voltage bus' },
  'lowest bus': { dimension: 'voltage', meaning: 'Bus voltage down to which the output is held' },
  output: { dimension: 'voltage', meaning: 'Output voltage of the block; a range where it follows the offer' },
  Lm: { dimension: 'inductance', meaning: 'Magnetising inductance, seen from the primary' },
  leakage: { dimension: 'inductance', meaning: 'Leakage inductance, seen from the primary' },
  frequency: { dimension: 'frequency', meaning: 'Switching frequency; a range where it moves' },
  duty: { dimension: 'ratio', meaning: 'Duty cycle of the main switch at the corner that is named; largest where none is' },
  clamp: { dimension: 'voltage', meaning: 'Voltage over the clamp, above the input' },
  spike: { dimension: 'voltage', meaning: 'Voltage spike above the plateau, as seen or assumed' },
  reflected: { dimension: 'voltage', meaning: 'Output voltage reflected to the primary' },
  'peak current': { dimension: 'current', meaning: 'Peak current in the main switch at full load' },
  'sense threshold': { dimension: 'voltage', meaning: 'Voltage across the sense resistor at which the controller limits' },
  'diode drop': { dimension: 'voltage', meaning: 'Forward drop of the rectifier' },
  power: { dimension: 'power', meaning: 'Power that the block is rated to pass on' },
  efficiency: { dimension: 'ratio', meaning: 'Efficiency of the block alone at full load' },
  'brown-in': { dimension: 'voltage', meaning: 'Supply voltage at which the block starts' },
  'brown-out': { dimension: 'voltage', meaning: 'Supply voltage at which the block stops' },
  'dead time': { dimension: 'time', meaning: 'Dead time between the two switches' },
  resonance: { dimension: 'frequency', meaning: 'Series resonant frequency' },
  Lr: { dimension: 'inductance', meaning: 'Resonant inductance' },
  Cr: { dimension: 'capacitance', meaning: 'Resonant capacitance' },
  voltage: { dimension: 'voltage', meaning: 'Nominal voltage of the pack' },
  charge: { dimension: 'charge', meaning: 'Rated charge of the pack' },
  energy: { dimension: 'energy', meaning: 'Rated energy of the pack' },
  'over-voltage': { dimension: 'voltage', meaning: 'Voltage at which the block shuts down' },
  input: { dimension: 'voltage', meaning: 'Input voltage of the block; a range where it moves' },
  L: { dimension: 'inductance', meaning: 'Inductance of the power inductor' },
  'ripple current': { dimension: 'current', meaning: 'Peak-to-peak ripple current in the inductor' },
  'line drop': { dimension: 'resistance', meaning: 'Line-drop compensation: volts added per ampere' },
  'hold-up': { dimension: 'time', meaning: 'Hold-up time that it was designed for' },
  standby: { dimension: 'power', meaning: 'Power that the block takes idle' },
  Lp: {
    dimension: 'inductance',
    meaning: 'Primary inductance with the secondary open, where Lr is that of the same winding with the secondary shorted',
  },
  'lowest frequency': { dimension: 'frequency', meaning: 'Frequency below which the controller does not go' },
  'current limit': { dimension: 'current', meaning: 'Peak current at which the controller stops a cycle' },
  coil: { dimension: 'inductance', meaning: 'Inductance of the transmitter coil' },
} as const satisfies Readonly<Record<string, Omit<StageParameter, 'key'>>>;

/** The parameters of a block by their words, in the order in which its page lists them. */
export function stageParameters(...keys: readonly (keyof typeof VOCABULARY)[]): readonly StageParameter[] {
  return keys.map((key) => ({ key, ...VOCABULARY[key] }));
}
