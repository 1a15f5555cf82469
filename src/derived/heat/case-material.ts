import type { Entry } from '../../entry/entry.ts';

/** Whether the outside is metal, by the author's word: what stands before "over" or "with" is outside ("PC over an aluminium frame" is plastic). */
export function isMetal({ body }: Entry): boolean {
  const [outside = ''] = (body.material ?? '').split(/\b(?:over|with|around|on)\b/iu);
  return /alumin|metal|steel|zinc|magnesium/iu.test(outside);
}
