import type { Dimension } from '../../units/dimension.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import type { ParameterEdge, StageGiven } from './stage-model.ts';

/** A parameter that a model cannot do without: where the author gives none, missing, and said which. */
export function wanted<D extends Dimension>(given: StageGiven, key: string, dimension: D, edge: ParameterEdge): Known<D> {
  return given.parameter(key, dimension, edge) ?? missing(`${key} of ${given.id} not given`, [`${key} of ${given.id}`]);
}
