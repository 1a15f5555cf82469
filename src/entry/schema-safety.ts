import { z } from 'zod';
import { reading, words, yesOrNo } from './schema-text.ts';

export const DISCHARGED_SCHEMA = z
  .union([
    z.string().min(1),
    z.strictObject({
      method: words('How the bulk capacitor was discharged.', '2.2 kΩ 10 W resistor with insulated leads'),
      voltage: reading('What the meter showed afterwards.', '0.4 V'),
    }),
  ])
  .describe(
    'How the stored charge was taken out before hands went in, and what the meter showed. Example: { method: 2.2 kΩ resistor, voltage: 0.4 V }',
  );

export const POWERED_OPEN_SCHEMA = z
  .union([
    yesOrNo('Whether it was powered with its case open.'),
    z.strictObject({ by: words('Who did it and on what bench.', 'qualified person, isolated and fused bench with cover') }),
  ])
  .describe('Whether it was powered with its case open; where it was, by whom and on what bench.');

export const CELLS_OPENED_SCHEMA = z
  .union([
    yesOrNo('Whether a cell pack was opened.'),
    z.strictObject({ 'charge state': reading('Voltage of a cell or charge left when it was opened.', '3.1 V') }),
  ])
  .describe('Whether a cell pack was opened; where it was, at what state of charge.');
