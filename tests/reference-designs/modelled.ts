import { bulkFigures } from '../../src/derived/bulk-figures.ts';
import type { StressRow } from '../../src/derived/derived.ts';
import { derive } from '../../src/derived/derive.ts';
import { inputFigures } from '../../src/derived/input-figures.ts';
import { stageGivens } from '../../src/derived/stress/stage-givens.ts';
import type { Entry, Fact } from '../../src/entry/entry.ts';
import { shareMatrix } from '../../src/sharing/share-matrix-of.ts';
import { stageOf } from '../../src/stages/index.ts';
import { isMissing, type Value } from '../../src/values/value.ts';
import type { CheckedEntry } from '../demo/entries-in.ts';

/** The stress of a part by the words of its quantity. @throws where there is none. */
export function stressRow({ derived }: CheckedEntry, reference: string, quantity: string): StressRow {
  const row = derived.stress.find((one) => one.references.includes(reference) && one.quantity === quantity);
  if (row === undefined) {
    const there = derived.stress.map((one) => `${one.references.join(', ')}: ${one.quantity}`).join('; ');
    throw new Error(`no ${quantity} of ${reference} among ${there}`);
  }
  return row;
}

/** What a stage works at, by the name of the figure. @throws where there is none, or with the reason why it is missing. */
export function operatingValue({ operating }: Pick<CheckedEntry['derived'], 'operating'>, stage: string, name: string): Value {
  const found = operating.find((one) => one.stage === stage && one.name === name);
  if (found === undefined) throw new Error(`no ${name} among ${operating.map((one) => one.name).join('; ')}`);
  if (isMissing(found.value)) throw new Error(found.value.reason);
  return found.value;
}

/** Rms current through the parts of one role, at the corner where it is largest. @throws with the reason where it is missing. */
export function roleRms(entry: Entry, stageId: string, role: string): Value<'current'> {
  const { ratedPower: power } = derive(entry);
  const input = inputFigures(entry, power);
  const givens = stageGivens(entry, { power, input, bulk: bulkFigures(entry, input), shares: shareMatrix(entry) });
  const stage = entry.stages.find(({ id }) => id === stageId);
  if (stage === undefined) throw new Error(`no stage ${stageId}`);
  const carried = stageOf(stage.kind)?.model?.rms?.[role]?.(givens(stage), { side: null });
  if (carried === undefined) throw new Error(`no current of a ${role}`);
  if (isMissing(carried.current)) throw new Error(carried.current.reason);
  return carried.current;
}

/** The entry with some parameters of one stage put in place of its own; null takes one away. */
export function withParameters(entry: Entry, stageId: string, parameters: Readonly<Record<string, Fact | null>>): Entry {
  const stages = entry.stages.map((stage) => {
    if (stage.id !== stageId) return stage;
    const all = Object.entries({ ...stage.parameters, ...parameters }).filter((one): one is [string, Fact] => one[1] !== null);
    return { ...stage, parameters: Object.fromEntries(all) };
  });
  return { ...entry, stages };
}
