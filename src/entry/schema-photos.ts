import { z } from 'zod';
import { evidenceWord, note, reading, words } from './schema-text.ts';

const PHOTO_SCHEMA = z
  .strictObject({
    file: words('Name of the file beside the entry.', 'board-top.jpg'),
    alt: z.string().optional().describe('What can be seen, for those who do not see it. A published entry needs it.'),
    title: words('Line under the picture.').optional(),
    credit: words('Who took it, where it was not you.').optional(),
    callouts: z
      .record(z.string().min(1), z.string().min(1))
      .optional()
      .describe(
        'Where a part is: zone letter and figure (B4), or across and down in per cent (42 % 61 %). Example: { Q1: B4, T1: 42 % 61 % }',
      ),
    scale: z
      .strictObject({
        from: words('First end, across and down.', '10 % 80 %'),
        to: words('Other end, across and down.', '60 % 80 %'),
        length: reading('Length between them.', '40 mm'),
        evidence: evidenceWord(),
      })
      .optional()
      .describe('Two points of known distance.'),
    distances: z
      .record(
        z.string().min(1),
        z.strictObject({
          from: words('First mark, across and down.', '41.2 % 55.0 %'),
          to: words('Other mark, across and down.', '47.6 % 55.0 %'),
          place: words('Place of insulation that it belongs to, by its id.', 'mains-output').optional(),
        }),
      )
      .optional()
      .describe(
        'Distances to be read out of the photo, by name; needs a scale. Example: { creepage T1: { from: 41.2 % 55 %, to: 47.6 % 55 % } }',
      ),
    note: note(),
  })
  .describe('One photo.');

export const PHOTOS_SCHEMA = z.array(PHOTO_SCHEMA).describe('Photos in their order; the first is photo 1.');
