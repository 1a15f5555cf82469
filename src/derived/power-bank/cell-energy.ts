import type { Entry } from '../../entry/entry.ts';
import { packEnergy } from '../../formulas/energy/pack-energy.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { fittedParts, pieces } from '../fitted-parts.ts';
import { quantitiesOf } from '../part-rating.ts';
import { valueOf } from '../../values/from-quantity.ts';
import type { Part } from '../../entry/entry.ts';

const COUNTED = { title: 'The entry itself', section: 'cells counted', standing: 'read' } as const;

/** Energy of the cells among the parts: count × nominal voltage × charge, with the intervals of their ratings. */
export function cellEnergy(entry: Entry): Known<'energy'> {
  const cells = fittedParts(entry, 'cell');
  const [first, ...others] = cells;
  if (first === undefined) return missing('no cell among the parts', ['cell']);
  if (others.length > 0 && new Set(cells.map(({ rating }) => rating?.written ?? '')).size > 1) return missing('cells of different ratings');
  const count = cells.reduce((sum, part) => sum + pieces(part), 0);
  if (!(count >= 1 && count < 1000)) return missing('count of cells not plausible');
  return applyFormula(packEnergy, {
    cells: assume('ratio', count, count, count, `${count} counted`, COUNTED),
    charge: rated(first, 'charge'),
    voltage: rated(first, 'voltage'),
  });
}

function rated<D extends 'charge' | 'voltage'>(part: Part, dimension: D): Known<D> {
  const [found] = quantitiesOf(part, dimension);
  const names = part.references.join(', ');
  if (found === undefined) return missing(`${names}: ${dimension} of the cell not known`, [`cell ${dimension}`]);
  const value = valueOf({ quantity: found, evidence: part.evidence }, part.path.join('.'), { bound: 'use' });
  return isMissing(value) ? missing(`${names}: ${dimension} of the cell not known`, [`cell ${dimension}`]) : value;
}
