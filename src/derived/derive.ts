import type { Entry } from '../entry/entry.ts';
import { shareMatrix } from '../sharing/share-matrix-of.ts';
import { bulkFigures } from './bulk-figures.ts';
import type { Derived } from './derived.ts';
import { familyId } from './family-id.ts';
import { inputFigures } from './input-figures.ts';
import { namedValues } from './named-values.ts';
import { powerPath } from './power-path/power-path-of.ts';
import { ratedPower } from './rated-power.ts';
import { revisionLetter } from './revision-letter.ts';
import { sizeFigures } from './size-figures.ts';
import { stressRows } from './stress-rows.ts';
import { topologyWords } from './topology-words.ts';

/** Everything that follows from one entry alone. Pure and total: what cannot be computed is a missing value with its reason. */
export function derive(entry: Entry): Derived {
  const shares = shareMatrix(entry);
  const power = ratedPower(entry, shares);
  const size = sizeFigures(entry, power);
  const input = inputFigures(entry, power);
  const bulk = bulkFigures(entry, input);
  return {
    ratedPower: power,
    size,
    input,
    bulk,
    shares,
    path: powerPath(entry, shares, power),
    stress: stressRows(entry, input, bulk),
    topology: topologyWords(entry),
    family: familyId(entry),
    revision: revisionLetter(entry.corrections),
    named: namedValues(entry, { ratedPower: power, size, input, bulk }),
  };
}
