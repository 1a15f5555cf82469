import type { Entry } from '../entry/entry.ts';
import { sumOfCurrents } from '../formulas/energy/sum-of-currents.ts';
import { sumOfPowers } from '../formulas/energy/sum-of-powers.ts';
import type { OutputPoint } from '../stages/models/stage-model.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import type { Known } from '../values/value.ts';
import { largest } from './offered.ts';
import { feederOf, pathTree, upstream } from './power-path/path-tree.ts';

/** One load of the whole device at which everything is to be worked out: what its ports carry at one line. */
export interface LoadPoint {
  readonly line: Known<'voltage'>;
  /** Output power over input power of the whole device there. */
  readonly efficiency: Known<'ratio'>;
  readonly power: Known<'power'>;
  /** What each stage passes on, port by port. A stage that is left out feeds no port in use. */
  readonly through: ReadonlyMap<string, readonly OutputPoint[]>;
}

/** The load of an entry with some of its ports in use. */
export function loadPoint(
  entry: Entry,
  { line, efficiency }: Pick<LoadPoint, 'line' | 'efficiency'>,
  outputs: ReadonlyMap<string, OutputPoint>,
): LoadPoint {
  const tree = pathTree(entry);
  const through = new Map<string, OutputPoint[]>();
  for (const [port, output] of outputs) {
    for (const stage of upstream(feederOf(port, tree), tree)) through.set(stage, [...(through.get(stage) ?? []), output]);
  }
  return { line, efficiency, power: powerOfAll([...outputs.values()]), through };
}

/** What several outputs take together. */
export function powerOfAll(outputs: readonly OutputPoint[]): Known<'power'> {
  return foldFormula(
    outputs.map(({ power }) => power),
    (first, second) => applyFormula(sumOfPowers, { first, second }),
    'power of the ports in use',
  );
}

/** Ports of one converter as its one output: they stand at one voltage, and their currents add. */
export function asOneOutput(outputs: readonly OutputPoint[]): OutputPoint | null {
  const [only, ...more] = outputs;
  if (only === undefined || more.length === 0) return only ?? null;
  return {
    voltage: largest(outputs.map(({ voltage }) => voltage)) ?? only.voltage,
    current: foldFormula(
      outputs.map(({ current }) => current),
      (first, second) => applyFormula(sumOfCurrents, { first, second }),
      'current of the ports in use',
    ),
    power: powerOfAll(outputs),
    name: outputs.map(({ name }) => name).join(' and '),
  };
}
