import { z } from 'zod';
import { note, reading, words } from './schema-text.ts';

const CLAIM_SCHEMA = z
  .strictObject({
    of: words('What is claimed.', 'power density', 'average efficiency', 'no-load power', 'turns'),
    value: reading('The claimed value as stated.', '30 W/in³', '"> 94 %"'),
    basis: z.enum(['cased', 'board']).optional().describe('Cased or bare board, for size and density.'),
    line: reading('Supply voltage.', '115 V').optional(),
    output: reading('Output voltage.', '20 V').optional(),
    load: reading('Load.', '100 %').optional(),
    port: words('Port.').optional(),
    where: words('Where it stands.', 'front page', 'table 1').optional(),
    note: note(),
  })
  .describe('One result that the maker or a document states.');

export const CLAIMS_SCHEMA = z
  .array(CLAIM_SCHEMA)
  .describe('Results that the maker or a document states; compared with what is computed, never mixed with it.');
