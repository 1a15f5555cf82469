import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blackBodyFlux } from '../../src/formulas/black-body-flux.ts';
import { allHeat, boxHeat, boxRise, simplifiedBoxHeat } from '../../src/formulas/box-heat.ts';
import {
  coefficient,
  nusseltHorizontalCylinder,
  nusseltHotFaceUp,
  nusseltVertical,
  nusseltVerticalBoundaryLayer,
  nusseltVerticalLaminar,
  rayleigh,
} from '../../src/formulas/free-convection.ts';
import { boxSurfaceTemperature } from '../../src/formulas/thermal/box-surface-temperature.ts';
import type { AirProperties } from '../../src/standards/air-properties.ts';
import { published } from '../published/published.ts';

function air(kelvin: number, conductivity: number, viscosity: number, diffusivity: number, prandtl: number): AirProperties {
  return { kelvin, conductivity, viscosity, diffusivity, prandtl };
}

/** Textbook examples in the FOSSEE companion notebooks; the numbers are those its programs print. */
describe('natural convection as textbooks work it', () => {
  it('Incropera, example 9.2, p. 572: a glass door of 0.71 m at 232 °C gives off 1060 W', () => {
    const properties = air(400, 0.0338, 26.4e-6, 38.3e-6, 0.69);
    const number = rayleigh(properties, 209, 0.71, 0.0025);
    // Printed 1.81·10⁹; the source cuts 1.814 off.
    expect(Math.abs(number / 1.81e9 - 1)).toBeLessThan(0.005);
    const watts = coefficient(nusseltVertical(number, 0.69), properties, 0.71) * 0.71 * 1.02 * 209;
    const comparison = published(watts, '1060 W', 'power');
    expect(comparison.agrees, comparison.says).toBe(true);
  });

  it('Incropera, example 9.4, p. 580: a pipe of 0.1 m at 438 K gives off 763 W on each metre', () => {
    const properties = air(367, 0.0313, 22.8e-6, 32.8e-6, 0.697);
    const number = rayleigh(properties, 142, 0.1, 0.002725);
    const convected = coefficient(nusseltHorizontalCylinder(number, 0.697), properties, 0.1) * Math.PI * 0.1 * 142;
    const radiated = 0.85 * Math.PI * 0.1 * blackBodyFlux(438 - 273.15, 296 - 273.15);
    const comparison = published(convected + radiated, '763 W', 'power');
    expect(comparison.agrees, comparison.says).toBe(true);
    expect(radiated).toBeGreaterThan(convected);
  });

  it('Lienhard, example 8.1, p. 410: a wall of 0.4 m at 40 °C in air of 14 °C gives off 105.5 W/m²', () => {
    const properties = air(300, 0.02614, 15.66e-6, 22.03e-6, 0.711);
    // That book takes 9.8 m/s² and the expansion at the temperature of the air.
    const number = rayleigh(properties, 26, 0.4, (1 / 287) * (9.8 / 9.81));
    const per = coefficient(nusseltVerticalBoundaryLayer(number, 0.711), properties, 0.4);
    expect(Math.abs(per - 4.059)).toBeLessThan(0.0005);
    const comparison = published(26 * per, '105.5 W/m²', 'heat flux');
    expect(comparison.agrees, comparison.says).toBe(true);
  });

  it('Cengel, example 1.10: 86.4 W convected and 81.7 W radiated make 168.1 W', () => {
    const watts = 6 * 1.6 * 9 + 0.95 * 1.6 * blackBodyFlux(302 - 273.15, 293 - 273.15);
    const comparison = published(watts, '168.1 W', 'power');
    expect(comparison.agrees, comparison.says).toBe(true);
  });

  it('the laminar and the general form agree to a fifth between 10⁵ and 10⁸: no surface temperature is better than that', () => {
    for (const number of [1e5, 1e6, 1e7, 1e8]) {
      expect(Math.abs(nusseltVertical(number, 0.7) / nusseltVerticalLaminar(number, 0.7) - 1)).toBeLessThan(0.2);
    }
  });

  it('the two forms for a hot face up meet near 10⁷', () => {
    expect(Math.abs(nusseltHotFaceUp(1e7) / nusseltHotFaceUp(1.0001e7) - 1)).toBeLessThan(0.1);
  });
});

/** A sealed box on a table by the simplified relations; the textbook numbers are from memory (Cengel, cooling of electronics). */
describe('a sealed box of 0.4 × 0.3 × 0.15 m', () => {
  const box = { length: 0.4, width: 0.3, height: 0.15 };

  it('at 65 °C in 35 °C gives off 33.6 W at its sides, 14.6 W at its top and 64.5 W by radiation', () => {
    const heat = simplifiedBoxHeat(box, 65, 35, 0.85);
    expect(Math.abs(heat.sides - 33.6)).toBeLessThan(0.05);
    // Remembered as 14.6 W and 112.7 W; the relations give 14.53 W and 112.63 W.
    expect(Math.abs(heat.top - 14.6)).toBeLessThan(0.1);
    expect(Math.abs(heat.radiated - 64.5)).toBeLessThan(0.05);
    expect(Math.abs(allHeat(heat) - 112.7)).toBeLessThan(0.1);
  });

  it('with 75 W inside settles at 56.215 °C (solved apart from this program)', () => {
    expect(Math.abs(35 + boxRise(box, 75, 35, 0.85, simplifiedBoxHeat) - 56.2145)).toBeLessThan(0.0005);
  });
});

describe('a box of adapter size', () => {
  const box = { length: 0.06, width: 0.06, height: 0.03 };

  it('with 5 W in air of 25 °C settles at 51.06 °C when the air is held at 320 K (fixed-point iteration apart from this program)', () => {
    const fixed = air(320, 0.0278, 17.9e-6, 25.5e-6, 0.704);
    const rise = boxRise(box, 5, 25, 0.9, (given, surface, ambient, emissivity) =>
      boxHeat(given, surface, ambient, emissivity, () => fixed),
    );
    expect(Math.abs(25 + rise - 51.0599)).toBeLessThan(0.0005);
    const perSquareMetre = 5 / (0.0144 * rise);
    expect(Math.abs(perSquareMetre - 13.324)).toBeLessThan(0.0005);
  });

  it('gives off its loss at the temperature found, whatever the loss', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 30, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }), (loss, ambient) => {
        const rise = boxRise(box, loss, ambient, 0.9);
        expect(Math.abs(allHeat(boxHeat(box, ambient + rise, ambient, 0.9)) / loss - 1)).toBeLessThan(1e-6);
      }),
      { seed: 20_26, numRuns: 100 },
    );
  });

  it('runs hotter with more loss and cooler with more surface', () => {
    const rise = boxRise(box, 5, 25, 0.9);
    expect(boxRise(box, 6, 25, 0.9)).toBeGreaterThan(rise);
    expect(boxRise({ ...box, length: 0.08 }, 5, 25, 0.9)).toBeLessThan(rise);
    expect(boxRise(box, 0, 25, 0.9)).toBeLessThan(1e-9);
  });

  it('states ±20 % of the rise through its factor', () => {
    const at = (correlation: number): number =>
      boxSurfaceTemperature.compute({ loss: 5, ...box, ambient: 25, emissivity: 0.9, correlation });
    expect(Math.abs((at(1.2) - 25) / (at(1) - 25) - 1.2)).toBeLessThan(1e-9);
  });

  it('has no answer beyond a rise of 400 K', () => {
    expect(boxRise(box, 1000, 25, 0.9)).toBeNaN();
    expect(boxRise(box, -1, 25, 0.9)).toBeNaN();
  });
});
