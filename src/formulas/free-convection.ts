import type { AirProperties } from '../standards/air-properties.ts';

const GRAVITY = 9.81;

/**
 * Rayleigh number of a face in still air.
 *
 * @param air properties at the film temperature
 * @param difference surface less air, K
 * @param length characteristic length, m
 * @param expansion thermal expansion of air, 1/K; one over the film temperature where it is left out
 */
export function rayleigh(air: AirProperties, difference: number, length: number, expansion = 1 / air.kelvin): number {
  return (GRAVITY * expansion * difference * length ** 3) / (air.viscosity * air.diffusivity);
}

/** Vertical face at any Rayleigh number (Churchill and Chu; Incropera, chapter 9). */
export function nusseltVertical(rayleighNumber: number, prandtl: number): number {
  const denominator = (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27);
  return (0.825 + (0.387 * rayleighNumber ** (1 / 6)) / denominator) ** 2;
}

/** Vertical face below 10⁹ (Churchill and Chu, the laminar form, which is closer there). */
export function nusseltVerticalLaminar(rayleighNumber: number, prandtl: number): number {
  return 0.68 + (0.67 * rayleighNumber ** 0.25) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (4 / 9);
}

/** Laminar vertical plate (Squire and Eckert; Lienhard, chapter 8). */
export function nusseltVerticalBoundaryLayer(rayleighNumber: number, prandtl: number): number {
  return 0.678 * rayleighNumber ** 0.25 * (prandtl / (0.952 + prandtl)) ** 0.25;
}

/** Horizontal cylinder at any Rayleigh number (Churchill and Chu; Incropera, chapter 9). */
export function nusseltHorizontalCylinder(rayleighNumber: number, prandtl: number): number {
  const denominator = (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27);
  return (0.6 + (0.387 * rayleighNumber ** (1 / 6)) / denominator) ** 2;
}

/** Hot face looking up; the characteristic length is area over perimeter. Printed for 10⁴ to 10¹¹. */
export function nusseltHotFaceUp(rayleighNumber: number): number {
  return rayleighNumber <= 1e7 ? 0.54 * rayleighNumber ** 0.25 : 0.15 * rayleighNumber ** (1 / 3);
}

/** Hot face looking down; the characteristic length is area over perimeter. Printed for 10⁵ to 10¹⁰. */
export function nusseltHotFaceDown(rayleighNumber: number): number {
  return 0.27 * rayleighNumber ** 0.25;
}

/** Heat transfer coefficient, W/(m²·K), of a Nusselt number over its own characteristic length. */
export function coefficient(nusselt: number, air: AirProperties, length: number): number {
  return (nusselt * air.conductivity) / length;
}
