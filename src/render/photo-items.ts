import type { Entry, Part } from '../entry/entry.ts';
import type { CalloutItem } from '../figures/photo-frame/callout-item.ts';
import { zoneAt } from '../figures/photo-frame/frame-size.ts';
import { partGroups } from './part-groups.ts';
import { partAnchor } from './references.ts';
import { roleName } from './stress.ts';

/** Anchor of a photo: "photo-3". Its zones add theirs: "photo-3-B4". */
export function photoAnchor(index: number): string {
  return `photo-${index + 1}`;
}

/** Item numbers of the parts: 1, 2, 3 … in the order of the part table. */
function itemNumbers(entry: Entry): ReadonlyMap<Part, number> {
  return new Map(
    partGroups(entry)
      .flatMap(({ parts }) => parts)
      .map((part, index) => [part, index + 1]),
  );
}

/** The marks of one photo in the order of their numbers; a callout to a part that there is not has none. */
export function photoItems(entry: Entry, photo: number): readonly CalloutItem[] {
  const numbers = itemNumbers(entry);
  const callouts = entry.photos[photo]?.callouts ?? [];
  const items = callouts.flatMap(({ part: reference, x, y }): readonly CalloutItem[] => {
    const part = entry.parts.find(({ references }) => references.includes(reference));
    const number = part === undefined ? undefined : numbers.get(part);
    if (part === undefined || number === undefined) return [];
    const anchor = `${photoAnchor(photo)}-${partAnchor(reference)}`;
    return [{ number, title: `${reference}, ${roleName(part.role)}`, rowAnchor: partAnchor(reference), anchor, x, y }];
  });
  return [...items].sort((a, b) => a.number - b.number);
}

/** Whether any photo points to a part. */
export function hasCallouts(entry: Entry): boolean {
  return entry.photos.some(({ callouts }) => callouts.length > 0);
}

/** Where one part is to be seen. */
interface PartSighting {
  readonly anchor: string;
  /** "photo 3, B4". */
  readonly words: string;
}

/** A part as the part table numbers it, with every photo that points to it. */
export interface NumberedPart {
  readonly number: number;
  readonly sightings: readonly PartSighting[];
}

/** The numbers of all parts, and where the photos show them. */
export function numberedParts(entry: Entry): ReadonlyMap<Part, NumberedPart> {
  const sightings = (part: Part): readonly PartSighting[] =>
    entry.photos.flatMap(({ callouts }, photo) =>
      callouts
        .filter((callout) => part.references.includes(callout.part))
        .map((callout) => ({
          anchor: `${photoAnchor(photo)}-${partAnchor(callout.part)}`,
          words: `photo ${photo + 1}, ${zoneAt(callout.x, callout.y)}`,
        })),
    );
  return new Map([...itemNumbers(entry)].map(([part, number]) => [part, { number, sightings: sightings(part) }]));
}
