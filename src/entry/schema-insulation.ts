import { z } from 'zod';
import { evidenceWord, note, oneOrMore, reading, words, yesOrNo } from './schema-text.ts';

const INSULATION_PLACE_SCHEMA = z
  .strictObject({
    between: words('What is kept apart.', 'primary and secondary').optional(),
    kind: z.enum(['functional', 'basic', 'supplementary', 'reinforced']).optional().describe('Kind of insulation that the place must be.'),
    clearance: reading('Shortest way through air.', '6.2 mm').optional(),
    creepage: reading('Shortest way along the surface.', '7.6 mm').optional(),
    slot: reading('Width of a slot in the board.', '1.0 mm').optional(),
    thickness: reading('Thickness of solid insulation.', '0.4 mm').optional(),
    sheet: yesOrNo('Whether an insulating sheet stands between.').optional(),
    'working voltage': reading('Working voltage across it, where known.', '420 V').optional(),
    withstand: reading('Test voltage that it is stated or seen to hold.', '3 kV AC').optional(),
    'material group': z.enum(['I', 'II', 'IIIa', 'IIIb']).optional().describe('Material group of the surface by its tracking index.'),
    'pollution degree': z
      .union([z.literal(1), z.literal(2), z.literal(3)])
      .optional()
      .describe('Pollution degree: 1, 2 or 3.'),
    altitude: reading('Highest altitude of use.', '5000 m').optional(),
    method: words('How it was measured.', 'caliper', 'pin gauge').optional(),
    'also stated': oneOrMore('Other values that a document states for it.').optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('One place where insulation was measured.');

export const INSULATION_SCHEMA = z
  .record(z.string().min(1), INSULATION_PLACE_SCHEMA)
  .describe('Insulation distances by place: barrier, optocoupler, transformer …');
