import { z } from 'zod';
import { note, words } from './schema-text.ts';

export const ANSWERS_SCHEMA = z
  .array(
    z.strictObject({
      to: words('Id of the rule that is answered.', 'capacitor-voltage-margin'),
      at: words('Part, port or field that the finding is about; every finding of the rule where left out.', 'C21').optional(),
      because: words('Your reason, which is published as a footnote.'),
    }),
  )
  .describe('Answers to findings.');

export const CORRECTIONS_SCHEMA = z
  .array(
    z.strictObject({
      date: words('Day of the correction.', '2026-04-02'),
      where: words('What was corrected.', 'mass', 'C5 rating'),
      was: words('What stood there before.').optional(),
      is: words('What stands there now.').optional(),
      why: words('How the mistake came about or was found.'),
    }),
  )
  .describe('Mistakes corrected in the open.');

export const RECALL_SCHEMA = z
  .strictObject({
    authority: words('Who recalled it.'),
    date: words('Day of the notice.', '2026-05-11'),
    url: words('Address of the notice.'),
    hazard: words('What can happen.', 'fire'),
  })
  .describe('Recall notice; shown above everything else.');

export const SOURCES_SCHEMA = z
  .array(z.union([z.string().min(1), z.strictObject({ title: words('Title.'), url: words('Address.').optional(), note: note() })]))
  .describe('What you drew on: data sheets, documents, other reviews.');
