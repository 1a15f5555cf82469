import { z } from 'zod';
import { evidenceWord, note, oneOrMore, reading } from './schema-text.ts';

export const POWER_BY_INPUT_SCHEMA = z
  .record(z.string().min(1), z.string().min(1))
  .describe('Highest output power from this input voltage upwards, where it depends on the input. Example: { 12 V: 100 W, 20 V: 140 W }');

export const NAMEPLATE_SCHEMA = z
  .strictObject({
    input: oneOrMore('Input line as printed; a list where several are printed.', '100-240 V~ 50/60 Hz 1.8 A', '5-31 V DC').optional(),
    output: oneOrMore('Output lines as printed.', '100 W max', '[USB-C1 5 V⎓3 A / 20 V⎓5 A, USB-A 5 V⎓2.4 A]').optional(),
    total: reading('Total continuous output power, where printed.', '100 W').optional(),
    peak: reading('Peak output power, where it is printed beside the continuous one.', '340 W').optional(),
    'total at input': POWER_BY_INPUT_SCHEMA.optional(),
    capacity: reading('Cell capacity of a power bank as printed.', '10000 mAh 3.7 V (37 Wh)').optional(),
    'output capacity': reading('Rated capacity at the output of a power bank.', '5500 mAh 5 V').optional(),
    marks: oneOrMore('Protection class, symbols and approval words as printed.', '[class II, CE]').optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('What is printed on the device, as printed.');
