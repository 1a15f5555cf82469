import { z } from 'zod';
import { evidenceWord, note, reading, words } from './schema-text.ts';

const CONDITIONS = {
  port: words('Port, or several: C1, C2.').optional(),
  line: reading('Supply voltage at the input.', '230 V 50 Hz', '13.5 V').optional(),
  output: reading('Output voltage that was set.', '20 V').optional(),
  at: z.enum(['board', 'connector', 'cable end']).optional().describe('Where volts were taken.'),
  method: words('How it was obtained.', 'power meter and electronic load', 'reported by the operating system').optional(),
  instrument: words('Name of an instrument listed above.').optional(),
  ambient: reading('Temperature of the air.', '25 °C').optional(),
  after: reading('Time since power was applied.', '30 min').optional(),
  evidence: evidenceWord(),
  note: note(),
};

const EFFICIENCY_RUN_SCHEMA = z
  .strictObject({
    ...CONDITIONS,
    port: words('Port, or several that were loaded at once, in the order of what was measured.', 'C1', 'C1 + C2 + A1').optional(),
    output: reading(
      'Output voltage that was set; with several ports one for all of them, or one each.',
      '20 V',
      '20 V + 20 V + 9 V',
    ).optional(),
    cable: words('Cable between port and load: length and gauge give its drop.', '1 m AWG 20', '2 m, marked 5 A').optional(),
    of: words('Stage it belongs to, where it is not the whole device.', 'pfc').optional(),
    points: z
      .record(z.string().min(1), z.string().min(1))
      .optional()
      .describe(
        'Load to result: load in %, A, W or Ω; result as efficiency, input power, or both with the measured output voltage. Example: { 25 %: 79.5 %, 3 A: 4.998 V 17.7 W, 10 Ω: "> 94 %" }. Several ports: load in % or W of all together, or A each; volts and amperes (or watts) of each port with plus signs between, then the input power of all. Example: { 50 %: "20.03 V 0.9 A + 8.99 V 0.5 A, 25.4 W" }. Per cent of several ports means that each carries this share of what it is rated for, made smaller alike where all of them together would be above the total. A load that the device did not hold (it folded back or reset while it was loaded): "not sustained", with what happened behind it. Example: { 75 %: 91.0 %, 100 %: "not sustained, C1 fell back to 12 V" }',
      ),
    load: reading('Load of a single point.', '100 %', '3 A', '10 Ω').optional(),
    current: reading('Measured output current of a single point; with several ports one each.', '3 A', '2.5 A + 1.1 A').optional(),
    input: reading('Input power of a single point.', '71.1 W').optional(),
    efficiency: reading('Efficiency of a single point; or that the load was not held.', '91.2 %', '"> 94 %"', 'not sustained').optional(),
    average: reading('Average of the 25, 50, 75 and 100 % points, where only that is stated.', '92.8 %').optional(),
    peak: reading('Highest efficiency, where only that is stated.', '94 %').optional(),
  })
  .describe('One run of efficiency points under the same conditions.');

const POINT_SCHEMA = z
  .strictObject({
    ...CONDITIONS,
    value: reading('What was measured.', '42 mW', '< 30 mW'),
    place: words('Where on the device.', 'case top', 'Q1').optional(),
    load: reading('Load.', '100 %', '0.25 W').optional(),
    emissivity: reading('Emissivity set on the camera, in quotes.', '"0.95"').optional(),
    bandwidth: reading('Bandwidth of the oscilloscope.', '20 MHz').optional(),
  })
  .describe('One measured figure with its conditions.');

/** Short forms of a figure: one value, value by condition, or a list of points. */
const FIGURES = z.union([
  z.string().min(1),
  z.array(z.union([z.string().min(1), POINT_SCHEMA])).min(1),
  z.record(z.string().min(1), z.string().min(1)),
]);

export const MEASUREMENTS_SCHEMA = z
  .strictObject({
    instruments: z
      .record(z.string().min(1), z.string().min(1))
      .optional()
      .describe('Instruments by a short name. Example: { meter: AC power meter 0.1 %, load: electronic load 150 W }'),
    efficiency: z
      .union([EFFICIENCY_RUN_SCHEMA, z.array(EFFICIENCY_RUN_SCHEMA).min(1)])
      .optional()
      .describe('Efficiency, one run or a list of runs.'),
    standby: FIGURES.optional().describe('Power taken with nothing plugged in, by line voltage. Example: { 115 V: 31 mW, 230 V: 42 mW }'),
    ripple: FIGURES.optional().describe('Ripple and noise, by output voltage. Example: { 5 V: 38 mV, 20 V: 92 mV }'),
    thermal: FIGURES.optional().describe('Temperatures, by place. Example: { case top: 62 °C }'),
    'touch current': FIGURES.optional().describe('Touch current, by line voltage. Example: { 230 V: 0.12 mA }'),
    'touch voltage': FIGURES.optional().describe(
      'Voltage between output and earth on a meter, by line voltage; load is the input resistance of the meter, 10 MΩ where left out. Example: { 230 V: 80 V }',
    ),
    inrush: FIGURES.optional().describe('Inrush current, by line voltage. Example: { 230 V: 38 A }'),
    'hold-up': FIGURES.optional().describe('Time that the output holds after the input is gone, by line voltage.'),
    'pin voltage': FIGURES.optional().describe('Voltage left on the plug pins, by time after unplugging. Example: { 2 s: 28 V }'),
    stress: FIGURES.optional().describe('Highest voltage or current seen at a part, by reference. Example: { Q1: 344 V }'),
    frequency: FIGURES.optional().describe('Switching frequency, by stage. Example: { main: 118 kHz }'),
    regulation: FIGURES.optional().describe('Output voltage under load, by set voltage.'),
    droop: FIGURES.optional().describe('Lowest output voltage while something is plugged in, by set voltage. Example: { 5 V: 4.81 V }'),
    'sustained power': FIGURES.optional().describe('Output power that was held, by time. Example: { 0 min: 100 W, 12 min: 65 W }'),
    'delivered energy': FIGURES.optional().describe('Energy that a power bank gave, by output voltage. Example: { 5 V: 27.5 Wh }'),
    'recharge energy': FIGURES.optional().describe(
      'Energy that a power bank took from empty to full, by input voltage. Example: { 9 V: 43 Wh }',
    ),
    'recharge time': FIGURES.optional().describe('Time that it took from empty to full, by input voltage. Example: { 9 V: 105 min }'),
    note: note(),
  })
  .describe('What was measured on the bench.');
