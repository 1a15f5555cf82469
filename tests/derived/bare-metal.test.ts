import { describe, expect, it } from 'vitest';
import { emissivityDoubt } from '../../src/derived/heat/bare-metal.ts';
import type { MeasuredPoint } from '../../src/entry/entry.ts';
import { fact } from './an-entry.ts';

const shown = (emissivity: string | null) => {
  const point: MeasuredPoint = {
    subject: 'thermal',
    value: fact('61 °C', 'temperature', 'measurements.thermal.0'),
    place: 'USB-C shell',
    conditions: emissivity === null ? {} : { emissivity },
    method: 'thermal camera',
    instrument: null,
    note: null,
    path: ['measurements', 'thermal', 0],
  };
  return emissivityDoubt(point, { isMetalCase: false, part: null }, {});
};

describe('bare metal seen by a camera', () => {
  it.each([
    [null, 'not given'],
    ['as set', 'not given'],
    ['0.95', 'of plastic'],
    ['about 0,95', 'of plastic'],
    ['95 %', 'of plastic'],
    ['0.1', null],
    ['10 %', null],
  ])('with an emissivity of %j: %s', (emissivity, doubt) => {
    expect(shown(emissivity)).toBe(doubt);
  });
});
