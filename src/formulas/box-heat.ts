import { airAt, type AirProperties } from '../standards/air-properties.ts';
import { blackBodyFlux } from './black-body-flux.ts';
import { coefficient, nusseltHotFaceDown, nusseltHotFaceUp, nusseltVerticalLaminar, rayleigh } from './free-convection.ts';
import { ABSOLUTE_ZERO } from './absolute-zero.ts';

const LARGEST_RISE = 400;
const STEPS = 60;
/** Far below what is printed: a billionth of the loss, or of a kelvin. */
const CLOSE = 1e-9;

/** Outer size of a box in metres; the height stands upright. */
export interface Box {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** Heat that the faces of a box give off, in watts. */
export interface BoxHeat {
  readonly sides: number;
  readonly top: number;
  readonly base: number;
  readonly radiated: number;
}

/**
 * Heat that a box gives off into free air on all six faces: laminar vertical faces, hot faces up and down, grey radiation
 * (Incropera, chapter 9, one set of correlations throughout).
 *
 * @param surface temperature of the surface, °C
 * @param ambient temperature of the air, °C
 * @param airOf properties of air at an absolute temperature; a test may hold them fixed
 */
export function boxHeat(
  box: Box,
  surface: number,
  ambient: number,
  emissivity: number,
  airOf: (kelvin: number) => AirProperties = airAt,
): BoxHeat {
  const { length, width, height } = box;
  const difference = surface - ambient;
  const film = (surface + ambient) / 2 - ABSOLUTE_ZERO;
  const air = airOf(film);
  const flat = length * width;
  const upright = 2 * height * (length + width);
  const across = flat / (2 * (length + width));
  const flatRayleigh = rayleigh(air, difference, across, 1 / film);
  const uprightNusselt = nusseltVerticalLaminar(rayleigh(air, difference, height, 1 / film), air.prandtl);
  return {
    sides: coefficient(uprightNusselt, air, height) * upright * difference,
    top: coefficient(nusseltHotFaceUp(flatRayleigh), air, across) * flat * difference,
    base: coefficient(nusseltHotFaceDown(flatRayleigh), air, across) * flat * difference,
    radiated: emissivity * (2 * flat + upright) * blackBodyFlux(surface, ambient),
  };
}

/**
 * Heat that a box on a table gives off by the simplified relations of the handbook: 1.42 and 1.32 (difference over length)^¼,
 * the base left out (Cengel, cooling of electronic equipment; from memory, for comparison only).
 */
export function simplifiedBoxHeat(box: Box, surface: number, ambient: number, emissivity: number): BoxHeat {
  const { length, width, height } = box;
  const difference = surface - ambient;
  const flat = length * width;
  const upright = 2 * height * (length + width);
  const across = (4 * flat) / (2 * (length + width));
  return {
    sides: 1.42 * (difference / height) ** 0.25 * upright * difference,
    top: 1.32 * (difference / across) ** 0.25 * flat * difference,
    base: 0,
    radiated: emissivity * (flat + upright) * blackBodyFlux(surface, ambient),
  };
}

/** All the heat of a box together, W. */
export function allHeat(heat: BoxHeat): number {
  return heat.sides + heat.top + heat.base + heat.radiated;
}

/**
 * Rise of the surface above the air at which a box gives off its loss, K, by false position.
 *
 * @returns NaN where the loss is below zero or the rise would be above 400 K
 */
export function boxRise(
  box: Box,
  loss: number,
  ambient: number,
  emissivity: number,
  heatOf: (box: Box, surface: number, ambient: number, emissivity: number) => BoxHeat = boxHeat,
): number {
  const missed = (rise: number): number => allHeat(heatOf(box, ambient + rise, ambient, emissivity)) - loss;
  let low = { rise: 0, missed: -loss };
  let high = { rise: LARGEST_RISE, missed: missed(LARGEST_RISE) };
  if (!(loss >= 0) || !(high.missed >= 0)) return Number.NaN;
  // False position; the end that stays twice has its weight halved, since heat grows with more than the first power of the rise.
  for (let step = 0, last = 0; step < STEPS && high.rise - low.rise > CLOSE; step += 1) {
    const rise = low.rise + ((high.rise - low.rise) * low.missed) / (low.missed - high.missed);
    const found = { rise, missed: missed(rise) };
    if (Math.abs(found.missed) <= CLOSE * loss) return rise;
    if (found.missed < 0) {
      low = found;
      if (last < 0) high = { ...high, missed: high.missed / 2 };
    } else {
      high = found;
      if (last > 0) low = { ...low, missed: low.missed / 2 };
    }
    last = Math.sign(found.missed);
  }
  return (low.rise + high.rise) / 2;
}
