import { ABSOLUTE_ZERO } from './absolute-zero.ts';

const STEFAN_BOLTZMANN = 5.67e-8;

/**
 * Heat flux in W/m² from a black surface to black surroundings, both in degrees Celsius; the constant is 5.67·10⁻⁸ W/(m²K⁴) as
 * the textbooks print it.
 */
export function blackBodyFlux(surface: number, surroundings: number): number {
  return STEFAN_BOLTZMANN * ((surface - ABSOLUTE_ZERO) ** 4 - (surroundings - ABSOLUTE_ZERO) ** 4);
}
