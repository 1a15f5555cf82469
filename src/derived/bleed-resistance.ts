import type { Entry, Part } from '../entry/entry.ts';
import { parallelResistance } from '../formulas/resistor/parallel-resistance.ts';
import { seriesResistance } from '../formulas/resistor/series-resistance.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { fittedParts, perPiece, pieces } from './fitted-parts.ts';
import { ratingOf } from './part-rating.ts';
import { PFC_KINDS, stageById } from './stage-kinds.ts';

type Resistance = Known<'resistance'>;

/**
 * Resistance of the known way down for the bulk capacitor: bleed resistors in its own stage or in the PFC, or whose note says
 * that they stand across the bulk. One in the input filter discharges the X capacitor and does not count: the bridge blocks it.
 */
export function bleedResistance(entry: Entry): Resistance {
  const across = fittedParts(entry, 'bleed-resistor').filter((part) => isAcrossBulk(entry, part));
  if (across.length === 0) return missing('no bleed resistor known across the bulk capacitor', ['bleed resistor across the bulk']);
  return foldFormula(across.map(resistanceOfKey), inParallel, 'bleed resistance');
}

function isAcrossBulk(entry: Entry, part: Part): boolean {
  const kinds = [part.stage, ...part.alsoIn].map((id) => stageById(entry, id)?.kind ?? '');
  return kinds.some((kind) => kind === 'bulk-capacitor' || PFC_KINDS.includes(kind)) || /\bbulk\b/iu.test(part.note ?? '');
}

function resistanceOfKey(part: Part): Resistance {
  const one = ratingOf(part, 'resistance');
  if (pieces(part) === 1) return one;
  const names = part.references.join(', ');
  if (part.arrangement === 'single' || part.arrangement === 'separate')
    return missing(`whether ${names} stand in series or in parallel is not said`, [`arrangement of ${names}`]);
  return foldFormula(perPiece(part, one), part.arrangement === 'series' ? inSeries : inParallel, 'bleed resistance');
}

function inSeries(first: Resistance, second: Resistance): Resistance {
  return applyFormula(seriesResistance, { first, second });
}

function inParallel(first: Resistance, second: Resistance): Resistance {
  return applyFormula(parallelResistance, { first, second });
}
