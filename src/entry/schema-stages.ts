import { z } from 'zod';
import { STAGE_PARAMETER_KEYS, parameterMeaning } from '../stages/index.ts';
import { evidenceWord, note, oneOrMore, reading, words } from './schema-text.ts';

const PARAMETERS: Record<string, z.ZodOptional<z.ZodString>> = Object.fromEntries(
  STAGE_PARAMETER_KEYS.map((key) => [key, reading(parameterMeaning(key)).optional()]),
);

const STAGE_FIELDS = z.strictObject({
  'same as': words('A stage that this one equals; what else stands here differs from it.', 'out C1').optional(),
  is: words('What block it is, in the words of the trade.', 'boost PFC', 'LLC half bridge').optional(),
  mode: words('How it runs.', 'critical conduction', 'quasi-resonant').optional(),
  feeds: oneOrMore('Ports or stages it feeds; the next stage where left out.', '[C1, A1]').optional(),
  turns: reading('Turns of the transformer windings, primary first.', '35:4:4', '"6:1"').optional(),
  'turns ratio': reading(
    'Primary over secondary as one ratio, where it was stated or measured: a number, or two winding voltages under test. Beside turns it is compared with them.',
    '"5.67 : 1"',
    'n = 5.67',
    '"12.0 V : 2.12 V measured"',
  ).optional(),
  reset: words(
    'How the core of a forward converter is reset: turns of the reset winding, or RCD, active clamp, two-switch, resonant.',
    '34 turns',
    '"1:1"',
    'active clamp',
  ).optional(),
  cells: words('Cells of a battery pack in series and parallel.', '4S2P').optional(),
  'also stated': oneOrMore('Other values that a document states for it.', 'turns 6:1 in the text').optional(),
  evidence: evidenceWord(),
  note: note(),
});

/** Stage object: the fixed fields, and every parameter that some stage declares. Which of them fit is checked per stage. */
const STAGE_SCHEMA = z.strictObject({ ...PARAMETERS, ...STAGE_FIELDS.shape }).describe('One block of the power path.');

export const STAGES_SCHEMA = z
  .record(z.string().min(1), z.union([z.string().min(1), STAGE_SCHEMA]))
  .describe(
    'Blocks of the power path in the order power flows, by your own name for them. Example: { bridge: rectifier, pfc: { is: boost PFC, bus: 392 V measured } }',
  );
