import type { Entry, Part, Stage } from '../entry/entry.ts';
import { stageOf } from '../stages/index.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** A stage and its parts; parts of no stage come last. */
export interface PartGroup {
  readonly title: string;
  readonly glyph: string | null;
  readonly parts: readonly Part[];
}

/** The parts by stage, in the order power flows: the order of the part table. */
export function partGroups(entry: Entry): readonly PartGroup[] {
  const ids = new Set(entry.stages.map((stage) => stage.id));
  const groups = entry.stages.map((stage) => ({
    title: stageTitle(stage),
    glyph: stage.kind,
    parts: entry.parts.filter((part) => part.stage === stage.id),
  }));
  const others = [...new Set(entry.parts.map((part) => part.stage).filter((id) => !ids.has(id)))];
  const rest = others.map((id) => ({ title: sentenceCase(id), glyph: null, parts: entry.parts.filter((part) => part.stage === id) }));
  return [...groups, ...rest].filter((group) => group.parts.length > 0);
}

/** "Buck, C3 · A1": the trade name, then what it feeds or its mode. */
function stageTitle(stage: Stage): string {
  const name = sentenceCase(stageOf(stage.kind)?.name ?? stage.kind);
  return stage.feeds.length > 0 ? `${name}, ${stage.feeds.join(' · ')}` : stage.mode === null ? name : `${name}, ${stage.mode}`;
}
