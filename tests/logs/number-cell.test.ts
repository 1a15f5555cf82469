import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measuredCell, numberInCell, writtenPlaces } from '../../src/logs/number-cell.ts';

describe('a number in a cell of a log', () => {
  test.each(['0', '7', '-1.5', '20.0834', '.5', '5.', '1e3', '2.5E-03', ' 4.2 ', '+3', '-0.001', '123456789012345678'])(
    '"%s" is read as JavaScript reads it',
    (cell) => {
      expect(numberInCell(cell, 'point')).toBe(Number(cell));
    },
  );

  test('every decimal number is read to the same double as the language reads it', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 12 }), (whole, places) => {
        const cell = `${whole < 0 ? '-' : ''}${String(Math.abs(whole)).padStart(places + 1, '0')}`.replace(
          new RegExp(`(\\d{${places}})$`),
          places === 0 ? '$1' : '.$1',
        );
        expect(numberInCell(cell, 'point')).toBe(Number(cell));
        expect(numberInCell(cell.replace('.', ','), 'comma')).toBe(Number(cell));
      }),
      { seed: 5, numRuns: 2000 },
    );
  });

  test.each([
    '',
    ' ',
    'NaN',
    'nan',
    'inf',
    'Infinity',
    '-Infinity',
    '1e999',
    '0x1F',
    '0b1',
    '1,5',
    '1.2.3',
    '--1',
    '1 2',
    'OL',
    '-',
    '.',
    '1e',
    '20 V',
    '1_000',
  ])('"%s" is none', (cell) => {
    expect(numberInCell(cell, 'point')).toBeNaN();
  });

  test.each([
    ['1,5', 1.5],
    ['-0,25', -0.25],
    ['7', 7],
    ['1.5', NaN],
    ['1.000,5', NaN],
    ['1,2,3', NaN],
  ])('with a declared decimal comma "%s" is %s', (cell, value) => {
    expect(numberInCell(cell, 'comma')).toBe(value);
  });

  test.each([
    ['20.08 V', 'voltage', 20.08],
    ['980mA', 'current', 0.98],
    ['1.02 A', 'current', 1.02],
    ['42 °C', 'temperature', 42],
    ['20.08 V', 'current', NaN],
    ['20.08', 'voltage', NaN],
  ] as const)('a cell with a unit of its own: %s as %s', (cell, dimension, value) => {
    expect(measuredCell(cell, dimension, 'point')).toBe(value);
  });

  test('decimal places are counted as written', () => {
    expect(['20.0834', '20', '2.50e-3', '1,25'].map((cell) => writtenPlaces(cell, cell.includes(',') ? 'comma' : 'point'))).toEqual([
      4, 0, 5, 2,
    ]);
  });
});
