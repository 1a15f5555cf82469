import { nearestWord } from '../entry/nearest-word.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, atValue, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'photo-distance',
  title: 'A distance marked in a photo cannot be used as it stands',
  severity: 'warning',
  why: 'Two marks give a length only beside a known length in the same photo, and stand beside a place of insulation only where the entry has it.',
  advice: 'Give the photo a scale (a scale bar or a package side), and name the place by its id under insulation.',
  source: { title: 'Reading of lengths in a photo', section: 'similar triangles, as stated with the method', standing: 'common practice' },
};

export const photoDistance: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  const places = entry.insulation.map(({ id }) => id);
  return entry.photos.flatMap((photo, index) =>
    photo.distances.flatMap(({ name, place, path }) => {
      const found: Finding[] = [];
      if (photo.scale === null) {
        const message = `“${name}” is marked in photo ${index + 1}, which has no scale: no length can be read.`;
        found.push(findingOf(RULE, atKey(...path), { message, subject: name }));
      }
      if (place !== null && !places.includes(place)) {
        const nearest = nearestWord(place, places);
        const message = `“${name}” is marked for “${place}”, and there is no such place of insulation${nearest === null ? '' : `; did you mean “${nearest}”?`}`;
        found.push(findingOf(RULE, atValue(...path, 'place'), { message, subject: place }));
      }
      return found;
    }),
  );
}
