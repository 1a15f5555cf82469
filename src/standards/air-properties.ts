import type { Source } from '../values/value.ts';

/** Properties of air at one temperature and atmospheric pressure. */
export interface AirProperties {
  /** Absolute temperature, K. */
  readonly kelvin: number;
  /** Thermal conductivity, W/(m·K). */
  readonly conductivity: number;
  /** Kinematic viscosity, m²/s. */
  readonly viscosity: number;
  /** Thermal diffusivity, m²/s. */
  readonly diffusivity: number;
  /** Prandtl number. */
  readonly prandtl: number;
}

/** Air as the worked examples of a textbook use it. */
export const AIR_PROPERTIES: { readonly rows: readonly AirProperties[]; readonly source: Source } = {
  rows: [
    { kelvin: 303, conductivity: 0.0265, viscosity: 16.2e-6, diffusivity: 22.9e-6, prandtl: 0.71 },
    { kelvin: 350, conductivity: 0.03, viscosity: 20.92e-6, diffusivity: 29.9e-6, prandtl: 0.7 },
    { kelvin: 367, conductivity: 0.0313, viscosity: 22.8e-6, diffusivity: 32.8e-6, prandtl: 0.697 },
    { kelvin: 400, conductivity: 0.0338, viscosity: 26.4e-6, diffusivity: 38.3e-6, prandtl: 0.69 },
  ],
  source: {
    title: 'Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer (Wiley)',
    section: 'properties of air as used in the worked examples of chapter 9, in the FOSSEE textbook companion',
    standing: 'secondary',
  },
};

/** Air at an absolute temperature: linear between the rows, and along the nearest pair beyond them. */
export function airAt(kelvin: number): AirProperties {
  const { rows } = AIR_PROPERTIES;
  const after = rows.findIndex((row, index) => index > 0 && row.kelvin >= kelvin);
  const index = after === -1 ? rows.length - 1 : after;
  const [low, high] = [rows[index - 1], rows[index]];
  if (low === undefined || high === undefined) throw new RangeError('The table of air properties needs two rows');
  const share = (kelvin - low.kelvin) / (high.kelvin - low.kelvin);
  const between = (from: number, to: number): number => from + share * (to - from);
  return {
    kelvin,
    conductivity: between(low.conductivity, high.conductivity),
    viscosity: between(low.viscosity, high.viscosity),
    diffusivity: between(low.diffusivity, high.diffusivity),
    prandtl: between(low.prandtl, high.prandtl),
  };
}
