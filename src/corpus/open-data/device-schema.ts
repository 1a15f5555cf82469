import { z } from 'zod';

const NUMBER = z
  .strictObject({
    value: z.number().describe('The value itself, in the unit beside it'),
    low: z.number().nullable().describe('Lower end of its interval; null where nothing bounds it'),
    high: z.number().nullable().describe('Upper end of its interval; null where nothing bounds it'),
    unit: z.string().describe('SI unit; °C for temperatures, 1 for ratios'),
    significant: z.number().int().describe('Digits that the value supports'),
    evidence: z.enum(['printed', 'marked', 'measured', 'datasheet', 'assumed', 'computed']),
    written: z.string().optional().describe('As it stands in the entry'),
    reason: z.string().optional().describe('Why it was assumed'),
    formula: z.string().optional().describe('Formula that gave a computed value; its page is /methods/<formula>/'),
    get inputs() {
      return z.record(z.string(), NUMBER).optional().describe('What went into the formula, by symbol');
    },
  })
  .describe('A number with its interval and how it is known');

const MISSING = z
  .strictObject({ missing: z.string().describe('Why there is no value'), needs: z.array(z.string()) })
  .describe('A value that is not known');

const KNOWN = z.union([NUMBER, MISSING]);

const TEXT = z.string().nullable();

const QUANTITY = NUMBER.omit({ inputs: true, formula: true, reason: true });

const PART = z.strictObject({
  id: z.string().describe('Stable: address of the device, a slash, the first reference'),
  references: z.array(z.string()),
  role: z.string(),
  stage: z.string(),
  maker: TEXT,
  number: TEXT,
  marking: TEXT,
  package: TEXT,
  technology: TEXT,
  rating: TEXT.describe('As found'),
  quantities: z.array(QUANTITY).describe('What the rating states'),
  evidence: z.string(),
  fitting: z.enum(['fitted', 'not fitted', 'absent', 'unknown']),
  pieces: z.number().describe('Pieces for each reference'),
  fromFactSheet: z.array(z.string()).describe('Fields that the fact sheet of the part gave'),
});

const PHOTO_POINT = z.tuple([z.number(), z.number()]).describe('Fractions of width and height, from the upper left corner');

const PHOTO_LINE = z.strictObject({ from: PHOTO_POINT, to: PHOTO_POINT });

/** The device file `/teardowns/<id>/data.json`: one teardown, everything with its evidence. */
const DEVICE_SCHEMA = z.strictObject({
  $schema: z.string(),
  id: z.string().describe('Stable: the address of the teardown, /teardowns/<id>/'),
  number: TEXT.describe('Number of the sheet'),
  revision: z.string(),
  title: z.string(),
  published: TEXT.describe('ISO date'),
  termsOfUse: z.string().describe('Descriptor with the licence, relative to this file'),
  author: TEXT.describe('null: the author that the descriptor names'),
  maker: z.string(),
  name: z.string(),
  model: TEXT,
  kind: z.string(),
  released: TEXT,
  price: z.strictObject({ amount: z.number(), currency: z.string() }).nullable(),
  topology: z.strictObject({ family: z.string(), words: z.string(), isolated: z.boolean(), rectification: z.string() }),
  stages: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.string(),
      mode: TEXT,
      turns: z.array(z.number()).describe('Primary first'),
      turnsRatio: TEXT.describe('Primary over secondary as stated or measured, as written'),
      reset: TEXT.describe('How the core of a forward converter is reset, as written'),
      feeds: z.array(z.string()),
      parameters: z.record(z.string(), QUANTITY),
    }),
  ),
  ports: z.array(
    z.strictObject({
      id: z.string(),
      connector: z.string(),
      direction: z.string(),
      power: QUANTITY.nullable(),
      offers: z.array(z.string()).describe('As written'),
    }),
  ),
  parts: z.array(PART),
  derived: z.record(z.string(), KNOWN).describe('Computed figures by name, as the text can quote them'),
  stress: z.array(
    z.strictObject({
      references: z.array(z.string()),
      role: z.string(),
      quantity: z.string(),
      stress: KNOWN,
      rating: KNOWN,
      ratio: KNOWN,
      limit: z.number().nullable().describe('Highest ratio that the derating policy accepts'),
      policy: z.string(),
      verdict: z.enum(['within', 'straddles', 'over', 'withheld']).describe('An indication, not a compliance verdict'),
    }),
  ),
  measurements: z.array(
    z.strictObject({ subject: z.string(), value: QUANTITY, conditions: z.record(z.string(), z.string()), instrument: TEXT }),
  ),
  efficiency: z.array(
    z.strictObject({
      statistic: z.enum(['point', 'average', 'peak']),
      port: TEXT,
      line: QUANTITY.nullable(),
      output: QUANTITY.nullable(),
      loads: z.array(
        z.strictObject({
          port: z.string(),
          output: QUANTITY.nullable(),
          measuredOutput: QUANTITY.nullable(),
          current: QUANTITY.nullable(),
          power: QUANTITY.nullable(),
        }),
      ),
      measuredOutput: QUANTITY.nullable(),
      current: QUANTITY.nullable(),
      load: QUANTITY.nullable(),
      input: QUANTITY.nullable(),
      efficiency: QUANTITY.nullable(),
      notSustained: TEXT.describe('Words for a load that was set and not held; null where it was held'),
    }),
  ),
  photos: z
    .array(
      z.strictObject({
        photo: z.number().int().describe('Its number on the page, from 1'),
        width: z.number().int().nullable().describe('Pixels of the photo as it stands upright; null where it was not published'),
        height: z.number().int().nullable(),
        alternative: z.string().describe('What can be seen'),
        scale: PHOTO_LINE.extend({ length: QUANTITY })
          .nullable()
          .describe('The known length in the photo, by which the others are measured'),
        lengths: z
          .array(
            PHOTO_LINE.extend({
              name: z.string(),
              place: TEXT.describe('Place of insulation that it was marked for'),
              length: KNOWN.describe('With the interval of reading and tilt, and its working'),
            }),
          )
          .describe('Lengths read out of the photo: an indication only, never decides'),
      }),
    )
    .describe('Photos in their order, with what was measured in them'),
  corrections: z.array(z.strictObject({ date: z.string(), where: z.string(), was: TEXT, is: TEXT, why: z.string() })),
});

/** One teardown as data for others. */
export type DeviceData = z.infer<typeof DEVICE_SCHEMA>;

/** A number as data: interval, unit, evidence, and for computed ones the formula with its inputs. */
export type NumberData = z.infer<typeof NUMBER>;

/** The same as JSON Schema, draft 2020-12: `/data/device.schema.json`. */
export function deviceJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(DEVICE_SCHEMA, { target: 'draft-2020-12' });
  return { $schema, $id: 'device.schema.json', title: 'One teardown: the device, its parts and what was computed', ...schema };
}
