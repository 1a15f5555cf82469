import type { Entry, Part } from '../entry/entry.ts';

/** Safety classes in a part's rating: ["X1", "Y2"] for "4.7 nF X1/Y2". */
export function safetyClassesOf(part: Part): string[] {
  const marks = part.rating?.marks.filter((mark) => mark.kind === 'safety class') ?? [];
  return marks.flatMap((mark) => mark.text.match(/[XY][1-4]/g) ?? []);
}

/** Fitted parts of a role whose rating was read. */
export function ratedParts(entry: Entry, role: string): Part[] {
  return entry.parts.filter((part) => part.role === role && part.fitting === 'fitted' && part.rating !== null);
}

/** Whether a Y capacitor stands between the two sides: one in the input filter goes to earth, unless its class says otherwise. */
export function bridgesTheBarrier(part: Part, entry: Entry): boolean {
  const stage = entry.stages.find((candidate) => candidate.id === part.stage);
  return stage?.kind !== 'input-filter' || safetyClassesOf(part).includes('Y1');
}
