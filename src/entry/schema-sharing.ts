import { z } from 'zod';
import { evidenceWord, note, oneOrMore, reading, words } from './schema-text.ts';

const NEW_PLUG = z.enum(['keeps', 'dips', 'drops', 'not tested']);

const ALLOCATION_SCHEMA = z
  .strictObject({
    shares: reading('One power a port, in the order of the key.', '65 W + 30 W'),
    order: oneOrMore('Order of plugging, where it matters.', '[C1, C2]').optional(),
    asked: reading('What the devices asked for, in the order of the key.', '27 W + 45 W').optional(),
    advertised: reading('What the ports advertised, in the order of the key.').optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('Shares of one set of ports with their circumstances.');

const ALLOCATIONS_SCHEMA = z
  .union([
    z.array(z.string().min(1)).min(1),
    z.record(
      z.string().min(1),
      z.union([z.string().min(1), ALLOCATION_SCHEMA, z.array(z.union([z.string().min(1), ALLOCATION_SCHEMA])).min(1)]),
    ),
  ])
  .describe(
    'Power of each set of ports in use; or the printed lines as a list. ' +
      'Example: { C1: 100 W, C1 + C2: 50 W + 50 W, C3 + A1: 15 W shared, C1 + (C2 + A1): 45 W + 15 W, C1 then C2: 65 W + 30 W, C1 + A1: 65 W measured + 18 W printed }',
  );

export const SHARING_SCHEMA = z
  .strictObject({
    total: reading('Total power that the ports share.', '100 W').optional(),
    policy: z
      .enum(['assured', 'shared'])
      .optional()
      .describe('assured: every port keeps its maximum at once; shared: they draw on one total.'),
    alike: z
      .array(z.array(z.string().min(1)).min(2))
      .optional()
      .describe('Groups of ports that behave alike. Example: [[C1, C2]]'),
    minimum: z
      .union([z.string().min(1), z.record(z.string().min(1), z.string().min(1))])
      .optional()
      .describe('Power that every port keeps whatever the others do; by port where they differ. Example: 15 W'),
    allocations: ALLOCATIONS_SCHEMA.optional(),
    steps: z
      .record(z.string().min(1), z.union([z.string().min(1), z.array(z.string().min(1))]))
      .optional()
      .describe('Power levels that a port was seen to take, where the combinations are not known. Example: { C1: [100 W, 65 W, 45 W] }'),
    'on new plug': z
      .union([NEW_PLUG, z.record(z.string().min(1), NEW_PLUG)])
      .optional()
      .describe(
        'What happens to a running port when another device is plugged in: keeps, dips, drops, not tested; by port where they differ.',
      ),
    priority: words('Which port wins.', 'first plugged', 'last plugged', 'C1').optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('How power is divided between ports.');
