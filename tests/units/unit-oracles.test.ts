import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/units/dimension.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';

interface OracleQuantity {
  to(unit: string): { readonly scalar: number };
}

// js-quantities ships no types; the one function used is checked by the agreement below.
const jsQuantities = createRequire(import.meta.url)('js-quantities') as (text: string) => OracleQuantity;

/** Our spelling, the dimension, its SI unit in the oracles' words, and the unit spelled out for each oracle (null: it has none). */
const ROWS: readonly (readonly [string, Dimension, string, string | null, string | null])[] = [
  ['mV', 'voltage', 'volt', 'millivolt', 'millivolt'],
  ['kV', 'voltage', 'volt', 'kilovolt', 'kilovolt'],
  ['µA', 'current', 'ampere', 'microampere', 'microampere'],
  ['mA', 'current', 'ampere', 'milliampere', 'milliampere'],
  ['mW', 'power', 'watt', 'milliwatt', 'milliwatt'],
  ['kW', 'power', 'watt', 'kilowatt', 'kilowatt'],
  ['mΩ', 'resistance', 'ohm', 'milliohm', 'milliohm'],
  ['kΩ', 'resistance', 'ohm', 'kiloohm', 'kiloohm'],
  ['MΩ', 'resistance', 'ohm', 'megaohm', 'megaohm'],
  ['pF', 'capacitance', 'farad', 'picofarad', 'picofarad'],
  ['nF', 'capacitance', 'farad', 'nanofarad', 'nanofarad'],
  ['µF', 'capacitance', 'farad', 'microfarad', 'microfarad'],
  ['nH', 'inductance', 'henry', 'nanohenry', 'nanohenry'],
  ['µH', 'inductance', 'henry', 'microhenry', 'microhenry'],
  ['mH', 'inductance', 'henry', 'millihenry', 'millihenry'],
  ['kHz', 'frequency', 'hertz', 'kilohertz', 'kilohertz'],
  ['MHz', 'frequency', 'hertz', 'megahertz', 'megahertz'],
  ['µs', 'time', 'second', 'microsecond', 'microsecond'],
  ['ms', 'time', 'second', 'millisecond', 'millisecond'],
  ['min', 'time', 'second', 'minute', 'minute'],
  ['h', 'time', 'second', 'hour', 'hour'],
  ['mm', 'length', 'meter', 'millimeter', 'millimeter'],
  ['cm', 'length', 'meter', 'centimeter', 'centimeter'],
  ['in', 'length', 'meter', 'inch', 'inch'],
  ['ft', 'length', 'meter', 'foot', 'foot'],
  ['mil', 'length', 'meter', 'mil', 'mil'],
  ['mm²', 'area', 'meter^2', 'millimeter^2', 'mm^2'],
  ['cm²', 'area', 'meter^2', 'centimeter^2', 'cm^2'],
  ['in²', 'area', 'meter^2', 'inch^2', 'inch^2'],
  ['cm³', 'volume', 'meter^3', 'centimeter^3', 'cm^3'],
  ['in³', 'volume', 'meter^3', 'inch^3', 'inch^3'],
  ['mL', 'volume', 'meter^3', 'milliliter', 'milliliter'],
  ['L', 'volume', 'meter^3', 'liter', 'liter'],
  ['g', 'mass', 'kilogram', 'gram', 'gram'],
  ['oz', 'mass', 'kilogram', 'ounce', 'ounce'],
  ['lb', 'mass', 'kilogram', 'pound', 'poundmass'],
  ['mJ', 'energy', 'joule', 'millijoule', 'millijoule'],
  ['Wh', 'energy', 'joule', 'watt hour', 'watt hour'],
  ['mAh', 'charge', 'coulomb', 'milliampere hour', 'milliampere hour'],
  ['Ah', 'charge', 'coulomb', 'ampere hour', 'ampere hour'],
  ['W/cm³', 'power density', 'watt/meter^3', 'watt/centimeter^3', 'watt/cm^3'],
  ['W/in³', 'power density', 'watt/meter^3', 'watt/inch^3', 'watt/inch^3'],
  ['W/kg', 'specific power', 'watt/kilogram', 'watt/kilogram', 'watt/kilogram'],
  ['W/cm²', 'heat flux', 'watt/meter^2', 'watt/centimeter^2', 'watt/cm^2'],
  ['A²s', 'melting integral', 'ampere^2*second', 'ampere^2*second', 'ampere^2 second'],
];

/** Relative: three programs multiply in different orders, so the last binary digits may differ and nothing above them. */
const ROUNDING = 1e-9;

function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= ROUNDING * Math.abs(other);
}

function byJsQuantities(number: number, unit: string, si: string): number {
  return jsQuantities(`${number} ${unit}`).to(si.replaceAll('ampere^2*second', 'A2*s')).scalar;
}

// In mathjs "coulomb" is the constant of Coulomb's law, so charges are compared in ampere seconds.
function byMathjs(number: number, unit: string, si: string): number {
  return Number(evaluate(`number(${number} ${unit}, ${si.replace('*', ' ').replace('coulomb', 'ampere second')})`));
}

describe('conversions agree with two unit libraries that agree with each other', () => {
  it.each(ROWS)('%s as %s', (spelling, dimension, si, forJs, forMathjs) => {
    const numbers = fc.integer({ min: 1, max: 999_999 }).map((digits) => digits / 1000);
    fc.assert(
      fc.property(numbers, (number) => {
        const ours = readQuantity(`${number} ${spelling}`, dimension);
        expect(ours.ok).toBe(true);
        if (!ours.ok) return;
        const js = forJs === null ? null : byJsQuantities(number, forJs, si);
        const mathjs = forMathjs === null ? null : byMathjs(number, forMathjs, si);
        if (js !== null && mathjs !== null) expect(isSame(js, mathjs), `${js} and ${mathjs}`).toBe(true);
        expect(isSame(ours.value.nominal, js ?? mathjs ?? Number.NaN), `${ours.value.nominal}, ${String(js)}`).toBe(true);
      }),
      { seed: 20260314, numRuns: 40 },
    );
  });
});

describe('temperatures agree with both libraries', () => {
  it('°F to °C', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 400 }), (fahrenheit) => {
        const ours = readQuantity(`${fahrenheit} °F`, 'temperature');
        const js = jsQuantities(`${fahrenheit} tempF`).to('tempC').scalar;
        const mathjs = Number(evaluate(`number(${fahrenheit} degF, degC)`));
        const nominal = ours.ok ? ours.value.nominal : Number.NaN;
        // Absolute, since 32 °F is zero: a billionth of a kelvin is rounding.
        expect(Math.abs(js - mathjs)).toBeLessThan(1e-9);
        expect(Math.abs(nominal - js)).toBeLessThan(1e-9);
      }),
      { seed: 20260314 },
    );
  });
});
