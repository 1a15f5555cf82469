import { z } from 'zod';
import { ANSWERS_SCHEMA, CORRECTIONS_SCHEMA, RECALL_SCHEMA, SOURCES_SCHEMA } from './schema-answers.ts';
import { BODY_SCHEMA } from './schema-body.ts';
import { CLAIMS_SCHEMA } from './schema-claims.ts';
import { DEVICE_SCHEMA, SAMPLE_SCHEMA } from './schema-device.ts';
import { INSULATION_SCHEMA } from './schema-insulation.ts';
import { LOGS_SCHEMA } from './schema-logs.ts';
import { MEASUREMENTS_SCHEMA } from './schema-measurements.ts';
import { NAMEPLATE_SCHEMA } from './schema-nameplate.ts';
import { PARTS_SCHEMA } from './schema-parts.ts';
import { PHOTOS_SCHEMA } from './schema-photos.ts';
import { PORTS_SCHEMA } from './schema-ports.ts';
import { CELLS_OPENED_SCHEMA, DISCHARGED_SCHEMA, POWERED_OPEN_SCHEMA } from './schema-safety.ts';
import { SHARING_SCHEMA } from './schema-sharing.ts';
import { STAGES_SCHEMA } from './schema-stages.ts';
import { oneOrMore, words } from './schema-text.ts';

/**
 * The entry format, version 1: plain data as YAML gives it, before any text is read. Only `title` and `device` are needed,
 * so that a draft can grow; what a check needs beyond that, it says itself.
 */
export const ENTRY_SCHEMA = z
  .strictObject({
    format: z.literal(1).optional().describe('Version of the entry format; 1 where left out.'),
    title: words('Title of the teardown.', 'Four ports from one resonant stage'),
    number: words('Drawing number on the sheet.', 'LM-014').optional(),
    summary: words('One or two sentences for lists and for "in short".').optional(),
    status: z.enum(['draft', 'published']).optional().describe('draft where left out; only published entries are on the site.'),
    published: words('Day of publication.', '2026-03-14').optional(),
    author: words('Who wrote it, where it is not the name of the site.').optional(),
    device: DEVICE_SCHEMA,
    sample: SAMPLE_SCHEMA.optional(),
    nameplate: NAMEPLATE_SCHEMA.optional(),
    body: BODY_SCHEMA.optional(),
    ports: PORTS_SCHEMA.optional(),
    sharing: SHARING_SCHEMA.optional(),
    stages: STAGES_SCHEMA.optional(),
    parts: PARTS_SCHEMA.optional(),
    insulation: INSULATION_SCHEMA.optional(),
    measurements: MEASUREMENTS_SCHEMA.optional(),
    claims: CLAIMS_SCHEMA.optional(),
    logs: LOGS_SCHEMA.optional(),
    photos: PHOTOS_SCHEMA.optional(),
    derating: words('Derating policy by which parts are judged, where it is not that of the site.').optional(),
    discharged: DISCHARGED_SCHEMA.optional(),
    'powered open': POWERED_OPEN_SCHEMA.optional(),
    'cells opened': CELLS_OPENED_SCHEMA.optional(),
    answers: ANSWERS_SCHEMA.optional(),
    corrections: CORRECTIONS_SCHEMA.optional(),
    'former addresses': oneOrMore('Addresses that this teardown had before; they lead here.', '[/teardowns/lm-q-100/]').optional(),
    recall: RECALL_SCHEMA.optional(),
    sources: SOURCES_SCHEMA.optional(),
  })
  .describe('One teardown.');

/** Frontmatter that has the right shape; every text in it is still unread. */
export type EntrySource = z.infer<typeof ENTRY_SCHEMA>;
