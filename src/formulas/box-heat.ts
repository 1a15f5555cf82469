import { airAt, type AirProperties } from '../standards/air-properties.ts';
import { blackBodyFlux } from './black-body-flux.ts';
import { coefficient, nusseltHotFaceDown, nusseltHotFaceUp, nusseltVerticalLaminar, rayleigh } from './free-convection.ts';
import { ABSOLUTE_ZERO } from './absolute-zero.ts';

const LARGEST_RISE = 400;
const STEPS = 50;

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
 * Rise of the surface above the air at which a box gives off its loss, K, by bisection.
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
  const givenOff = (rise: number): number => allHeat(heatOf(box, ambient + rise, ambient, emissivity));
  if (!(loss >= 0) || givenOff(LARGEST_RISE) < loss) return Number.NaN;
  let low = 0;
  let high = LARGEST_RISE;
  for (let step = 0; step < STEPS; step += 1) {
    const middle = (low + high) / 2;
    if (givenOff(middle) < loss) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
