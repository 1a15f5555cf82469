import { z } from 'zod';
import { note, words } from './schema-text.ts';

const LOG_SCHEMA = z
  .strictObject({
    file: words('Name of the file beside the entry.', 'c1-100w.csv'),
    columns: z
      .record(z.string().min(1), z.string().min(1))
      .optional()
      .describe(
        'What each column is, by the file\'s own head; a unit that the head does not say stands behind "in". Words: time, date, voltage, current, power, temperature (with a place behind it where there are several), ambient, input voltage, input current, input power, energy, charge. Example: { time: Zeit [s], voltage: U(V), current: Ch2 in mA }',
      ),
    decimal: z.enum(['point', 'comma']).optional().describe('Decimal sign in the file; point where left out.'),
    port: words('Port that was logged.').optional(),
    line: words('Supply voltage during the log.', '230 V').optional(),
    ambient: words('Temperature of the air.', '25 °C').optional(),
    events: z
      .record(z.string().min(1), z.string().min(1))
      .optional()
      .describe('What was done during the log, by the time from its first row. Example: { 20 s: phone plugged into C2 }'),
    instrument: z
      .union([
        words('Name of an instrument, or several.', 'usb-tester', 'bench-load, thermocouple'),
        z.record(z.string().min(1), z.string().min(1)),
      ])
      .optional()
      .describe(
        'What it was logged with, as the bench file or the entry calls it; by the word of the column where input and output had one each. Example: { voltage: bench-load, current: bench-load, input power: power-meter }',
      ),
    method: words('How it was done, as the bench file calls it or in words.', 'Full load').optional(),
    note: note(),
  })
  .describe('One log.');

export const LOGS_SCHEMA = z
  .record(z.string().min(1), z.union([z.string().min(1), LOG_SCHEMA]))
  .describe('Logs by a short name: the file, or the file with its columns.');
