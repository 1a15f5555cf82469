import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'photo-description',
  title: 'A photo’s text alternative is missing or does not describe it',
  severity: 'error',
  why: 'Readers who do not see the photo get its text alternative; a file name or “photo” tells them nothing.',
  advice: 'Say what it shows: board from the primary side, bulk capacitor at the left.',
  source: {
    title: 'WCAG 2.2',
    section: 'success criterion 1.1.1, failure F30',
    standing: 'read',
    url: 'https://www.w3.org/TR/WCAG22/#non-text-content',
  },
};

export const photoDescription: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.photos.flatMap((photo) => {
    const words = photo.alt.trim();
    const empty = words === '';
    const nameless = /^(?:photo|image|picture|img|dsc)?[\s_-]*\d*\.?(?:jpe?g|png|webp|heic)?$/i.test(words) || words === photo.file;
    if (!empty && !nameless) return [];
    // A draft may wait for its words; a published page without them shuts readers out.
    const severity = empty && entry.status === 'published' ? 'error' : 'warning';
    const message = empty ? `${photo.file} has no text alternative.` : `“${words}” does not say what ${photo.file} shows.`;
    return [findingOf(RULE, atKey(...photo.path), { message, severity, subject: photo.file })];
  });
}
