import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/units/dimension.ts';
import { formatInterval, formatQuantity } from '../../src/units/format.ts';
import type { Quantity } from '../../src/units/quantity.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';

function read(text: string, dimension: Dimension): Quantity {
  const reading = readQuantity(text, dimension);
  if (!reading.ok) throw new Error(JSON.stringify(reading.remarks));
  return reading.value;
}

describe('a quantity is printed with the digits it was written with', () => {
  it.each([
    ['4.70 k', 'resistance', '4.70\u202FkΩ'],
    ['4k7', 'resistance', '4.7\u202FkΩ'],
    ['20,100 mAh', 'charge', '20\u202F100\u202FmAh'],
    ['4700 µF', 'capacitance', '4700\u202FµF'],
    ['68 ± 0.3 mm', 'length', '68 ± 0.3\u202Fmm'],
    ['5 mohm ±1 %', 'resistance', '5 ± 0.05\u202FmΩ'],
    ['100 µF +10/-20 %', 'capacitance', '100 +10/\u221220\u202FµF'],
    ['100-240 V~', 'voltage', '100 to 240\u202FV\u202FAC'],
    ['12VDC', 'voltage', '12\u202FV\u202FDC'],
    ['85 / 230 / 265 V', 'voltage', '85 / 230 / 265\u202FV'],
    ['up to 75 mW', 'power', '≤ 75\u202FmW'],
    ['more than 94 %', 'ratio', '> 94\u202F%'],
    ['1.8 A max', 'current', '1.8\u202FA max'],
    ['typ 140 mΩ', 'resistance', '140\u202FmΩ typ'],
    ['-40 °C', 'temperature', '\u221240\u202F°C'],
    ['29.8W/in3', 'power density', '29.8\u202FW/in³'],
    ['0.92', 'ratio', '0.92'],
    ['2.70"', 'length', '2.70\u202Fin'],
  ] as const)('%s', (text, dimension, printed) => {
    expect(formatQuantity(read(text, dimension)).text).toBe(printed);
  });
});

describe('a computed value is printed with no more digits than its interval supports', () => {
  it.each([
    [{ low: 16.7, nominal: 25, high: 33.3, significant: 3 }, 'power', '25', 'W', '17 to 33'],
    [{ low: 0.0000994, nominal: 0.0001025, high: 0.0001057, significant: 4 }, 'volume', '103', 'cm³', '99 to 106'],
    [{ low: 8.6, nominal: 9.1, high: 9.6, significant: 4 }, 'energy', '9.1', 'J', '8.6 to 9.6'],
    [{ low: 9.1, nominal: 9.1, high: 9.1, significant: 3 }, 'energy', '9.10', 'J', null],
    [{ low: 0.976, nominal: 0.976, high: 0.976, significant: 3 }, 'ratio', '97.6', '%', null],
    [{ low: 0.00022, nominal: 0.00022, high: 0.00022, significant: 2 }, 'current', '220', 'µA', null],
    [{ low: 102500, nominal: 102500, high: 102500, significant: 3 }, 'resistance', '103', 'kΩ', null],
    [{ low: 0.012, nominal: 0.012, high: 0.012, significant: 2 }, 'capacitance', '12\u202F000', 'µF', null],
    [{ low: 0, nominal: 0, high: 0, significant: 1 }, 'power', '0', 'W', null],
  ] as const)('%j as %s', (value, dimension, number, unit, interval) => {
    expect(formatInterval(value, dimension)).toMatchObject({ number, unit, interval });
  });

  it('uses the unit that is asked for', () => {
    const value = { low: 1.818e6, nominal: 1.818e6, high: 1.818e6, significant: 3 };
    expect(formatInterval(value, 'power density', 'W/in³').text).toBe('29.8\u202FW/in³');
    expect(formatInterval(value, 'power density', 'W/cm³').text).toBe('1.82\u202FW/cm³');
    expect(formatInterval({ low: 12345, nominal: 12345, high: 12345, significant: 3 }, 'voltage', 'V').number).toBe('12\u202F300');
  });

  it('rounds halves as the printed digits say', () => {
    expect(formatInterval({ low: 1.005, nominal: 1.005, high: 1.005, significant: 3 }, 'voltage').number).toBe('1.01');
    expect(formatInterval({ low: -2.5, nominal: -2.5, high: -2.5, significant: 1 }, 'voltage').number).toBe('\u22123');
  });
});

const UNITS: readonly (readonly [Dimension, readonly string[]])[] = [
  ['voltage', ['mV', 'V', 'kV', 'V AC', 'V DC']],
  ['current', ['µA', 'mA', 'A']],
  ['power', ['mW', 'W', 'kW']],
  ['resistance', ['mΩ', 'Ω', 'kΩ', 'MΩ']],
  ['capacitance', ['pF', 'nF', 'µF']],
  ['inductance', ['nH', 'µH', 'mH']],
  ['frequency', ['Hz', 'kHz', 'MHz']],
  ['time', ['µs', 'ms', 's', 'min', 'h']],
  ['length', ['mm', 'cm', 'm', 'in', 'mil', 'ft']],
  ['area', ['mm²', 'cm²', 'in²']],
  ['volume', ['mm³', 'cm³', 'in³', 'mL', 'L']],
  ['mass', ['g', 'kg', 'oz', 'lb']],
  ['energy', ['mJ', 'J', 'Wh', 'mWh']],
  ['charge', ['mAh', 'Ah']],
  ['temperature', ['°C', '°F']],
  ['ratio', ['%']],
  ['power density', ['W/cm³', 'W/in³']],
  ['specific power', ['W/kg']],
  ['melting integral', ['A²s']],
  ['heat flux', ['W/m²', 'W/cm²']],
];

const decimal = fc
  .tuple(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 0, max: 3 }))
  .map(([digits, places]) => (digits / 10 ** places).toFixed(places));

const shapes = fc.tuple(
  fc.constantFrom('plain', 'range', 'tolerance', 'percent', 'sides', 'most', 'least', 'typ', 'max'),
  decimal,
  decimal,
  fc.integer({ min: 1, max: 20 }),
);

function writtenAs([shape, one, other, percent]: readonly [string, string, string, number], unit: string): string {
  const [low, high] = Number(one) <= Number(other) ? [one, other] : [other, one];
  if (shape === 'range') return `${low} to ${high} ${unit}`;
  if (shape === 'tolerance') return `${high} ± ${low} ${unit}`;
  if (shape === 'percent') return `${one} ${unit} ±${percent} %`;
  if (shape === 'sides') return `${one} ${unit} +${percent}/-${percent + 1} %`;
  if (shape === 'most') return `≤ ${one} ${unit}`;
  if (shape === 'least') return `> ${one} ${unit}`;
  return shape === 'plain' ? `${one} ${unit}` : `${one} ${unit} ${shape}`;
}

/** Relative: formatting goes through the unit and back, so the last binary digits may differ and no written digit can. */
function isSame(one: number | null, other: number | null): boolean {
  if (one === null || other === null) return one === other;
  return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other), 1e-15);
}

describe('what is printed reads back as the same quantity', () => {
  it.each(UNITS)('%s', (dimension, units) => {
    fc.assert(
      fc.property(shapes, fc.constantFrom(...units), (shape, unit) => {
        const first = read(writtenAs(shape, unit), dimension);
        const again = read(formatQuantity(first).text, dimension);
        for (const end of ['low', 'nominal', 'high'] as const)
          expect(isSame(first[end], again[end]), `${end} of ${formatQuantity(first).text}`).toBe(true);
        expect(isSame(first.resolution, again.resolution)).toBe(true);
        const { bound, qualifier, waveform, unit: symbol } = again;
        expect({ bound, qualifier, waveform, symbol }).toEqual({
          bound: first.bound,
          qualifier: first.qualifier,
          waveform: first.waveform,
          symbol: first.unit,
        });
        expect(formatQuantity(again).text).toBe(formatQuantity(first).text);
      }),
      { seed: 20260314, numRuns: 150 },
    );
  });
});
