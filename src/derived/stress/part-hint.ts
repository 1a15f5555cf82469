import type { Part } from '../../entry/entry.ts';
import type { PartHint } from '../../stages/models/stage-model.ts';

/** What the author's note says of the place of a part: "input side", "cell side", "output side", "port side". */
export function partHint({ note }: Part): PartHint {
  if (note === null) return { side: null };
  if (/\b(?:input|supply|battery|cell|pack) side\b/iu.test(note)) return { side: 'input' };
  return { side: /\b(?:output|port|load) side\b/iu.test(note) ? 'output' : null };
}
