import type { Body, Entry } from '../entry/entry.ts';
import { powerDensity } from '../formulas/energy/power-density.ts';
import { specificPower } from '../formulas/energy/specific-power.ts';
import { boxVolume } from '../formulas/geometry/box-volume.ts';
import { cylinderVolume } from '../formulas/geometry/cylinder-volume.ts';
import type { Quantity } from '../units/quantity.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { valueOf } from '../values/from-quantity.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import type { SizeFigures } from './derived.ts';
import { factValue } from './fact-value.ts';

/** Volume, density and specific power; a volume measured by displacement wins over edges multiplied. */
export function sizeFigures(entry: Entry, power: Known<'power'>): SizeFigures {
  const { body } = entry;
  const volume = volumeOf(body);
  const mass = body.mass === null ? missing('mass not given', ['mass']) : factValue(body.mass);
  return {
    volume,
    density: applyFormula(powerDensity, { power, volume }),
    specificPower: applyFormula(specificPower, { power, mass }),
    basis: basisWords(body),
  };
}

function volumeOf(body: Body): Known<'volume'> {
  if (body.volume !== null) return factValue(body.volume);
  if (body.size === null) return missing('neither size nor volume given', ['size']);
  const { size, ...known } = body.size;
  const at = body.size.path.join('.');
  const edge = (quantity: Quantity<'length'>): Known<'length'> => valueOf({ ...known, quantity }, at);
  if (size.shape === 'cylinder') return applyFormula(cylinderVolume, { diameter: edge(size.diameter), height: edge(size.height) });
  const [length, width, height] = size.edges;
  return applyFormula(boxVolume, { length: edge(length), width: edge(width), height: edge(height) });
}

/** What is inside the volume: "cased, prongs folded", "board". */
function basisWords(body: Body): string {
  const prongs = body.prongs === null || body.prongs === 'none' ? [] : [`prongs ${body.prongs}`];
  const displacement = body.volume === null ? [] : ['volume as given'];
  return [body.basis, ...prongs, ...displacement].join(', ');
}
