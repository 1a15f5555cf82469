import { z } from 'zod';
import { evidenceWord, note, oneOrMore, reading, words, yesOrNo } from './schema-text.ts';

export const PART_SCHEMA = z
  .strictObject({
    'same as': words('A part that this one equals; what else stands here differs from it.', 'Q2').optional(),
    role: words('What it does in its stage, in the words of the trade.', 'bulk capacitor', 'switch').optional(),
    rating: reading('Its rating as the trade writes it.', '120 µF 420 V 105 °C', '"700 V, 140 mΩ"').optional(),
    maker: words('Who made it.').optional(),
    number: words('Part number, in quotes where it is digits only.').optional(),
    marking: words('What stands on it, in quotes where it is digits only.').optional(),
    package: words('Package.', 'DFN 8×8', 'RM8').optional(),
    technology: words('Technology.', 'GaN', 'SiC', 'polymer').optional(),
    count: z.int().min(1).max(1000).optional().describe('Pieces under each reference, where the rating does not say it (2 × …).'),
    arrangement: z
      .enum(['single', 'parallel', 'series', 'separate'])
      .optional()
      .describe('How several pieces are connected; separate where each stands for itself, one for each phase or port.'),
    fitted: yesOrNo('no: the place on the board is empty.').optional(),
    'also in': oneOrMore('Other stages that it serves.', '[pfc]').optional(),
    measured: reading('What the part itself measured, beside what is marked on it.', '2200 µF').optional(),
    'also stated': oneOrMore('Other values that a document states for it, with where.', '0.22 µF 500 V in the schematic').optional(),
    datasheet: words('Title or address of its data sheet.').optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('One part, or several equal ones named in one key.');

export const PARTS_SCHEMA = z
  .union([z.string().min(1), z.record(z.string().min(1), z.record(z.string().min(1), z.union([z.string().min(1), PART_SCHEMA])))])
  .describe(
    'Parts by stage, reference first; or the name of a spreadsheet beside the entry (parts.csv). ' +
      'A part is { role: …, rating: … }, one line "role, rating", or absent / unknown / not fitted. ' +
      'Several references in one key: Q2, Q3 or R11–R14. A part that was looked for and is not there: X capacitor: absent.',
  );
