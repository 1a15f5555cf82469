import type { Entry } from '../../entry/entry.ts';

/** Whether the outside is metal, by the author's word: what stands before "over" or "with" is outside ("PC over an aluminium frame" is plastic). */
export function isMetal({ body }: Entry): boolean {
  const [outside = ''] = (body.material ?? '').split(/\b(?:over|with|around|on)\b/iu);
  return /alumin|metal|steel|zinc|magnesium/iu.test(outside);
}

/** Words of a place that is metal on any case: the shell of a connector, a band, a plate. Covered ones (painted, taped) are not. */
const METAL_PLACE = /\b(?:metal|alumini?um|steel|brass|zinc|nickel)\b|\b(?:USB(?:-[AC])?|connector|plug) shell\b/iu;
const OVER_METAL = /\b(?:over|near|above|beside|painted|taped|coated|plastic|rubber)\b/iu;

/** Material that is touched at a place: what the author's words for the place say, else that of the case. */
export function touchedMaterial(entry: Entry, place: string): 'metal' | 'plastic' {
  if (METAL_PLACE.test(place) && !OVER_METAL.test(place)) return 'metal';
  return isMetal(entry) && !/\b(?:plastic|rubber)\b/iu.test(place) ? 'metal' : 'plastic';
}
