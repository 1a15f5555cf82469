import { describe, expect, it } from 'vitest';
import { neighbours, PREFERRED_SERIES, seriesOf } from '../../src/standards/preferred-values.ts';

function valuesOf(name: string): readonly number[] {
  return PREFERRED_SERIES.find((series) => series.name === name)?.values ?? [];
}

describe('preferred values of IEC 60063', () => {
  it('has as many values in a decade as the name says', () => {
    for (const { name, values } of PREFERRED_SERIES) expect(values).toHaveLength(Number(name.slice(1)));
  });

  it('differs from the rounded geometric series at eight values of E24', () => {
    const computed = Array.from({ length: 24 }, (_, index) => Math.round(10 * 10 ** (index / 24)));
    expect(valuesOf('E24').filter((value, index) => value !== computed[index])).toEqual([27, 30, 33, 36, 39, 43, 47, 82]);
  });

  // Listed at https://www.qsl.net/g4usp/Components/Component%20preferred%20values.htm
  it('has the 48 values of E48 as printed', () => {
    const printed =
      '100 105 110 115 121 127 133 140 147 154 162 169 178 187 196 205 215 226 237 249 261 274 287 301 316 332 348 365 383 402 422 442 464 487 511 536 562 590 619 649 681 715 750 787 825 866 909 953';
    expect(valuesOf('E48').join(' ')).toBe(printed);
  });

  it('has 920 in E192 where the rule would give 919', () => {
    const values = valuesOf('E192');
    expect(values.slice(184, 187)).toEqual([909, 920, 931]);
    expect(Math.round(100 * 10 ** (185 / 192))).toBe(919);
  });

  it('finds the coarsest series whatever the decade', () => {
    expect(seriesOf(47e-6)).toBe('E3');
    expect(seriesOf(4.7e-9)).toBe('E3');
    expect(seriesOf(0.33e-6)).toBe('E6');
    expect(seriesOf(120e-6)).toBe('E12');
    expect(seriesOf(5100)).toBe('E24');
    expect(seriesOf(80_600)).toBe('E96');
    expect(seriesOf(9200)).toBe('E192');
  });

  it('knows that 50 k is not preferred and where its neighbours are', () => {
    expect(seriesOf(50_000)).toBeNull();
    expect(neighbours(50_000, 'E24')).toEqual({ below: 47_000, above: 51_000 });
    expect(neighbours(50_000, 'E96')).toEqual({ below: 49_900, above: 51_100 });
    expect(neighbours(9.9, 'E24')).toEqual({ below: 9.1, above: 10 });
  });

  // Values of E24 that are in no three-digit series, so a test of E192 alone would miss them.
  it('accepts every value of E24 that E192 lacks', () => {
    for (const value of [220, 270, 300, 330, 360, 390, 430, 510, 560, 620, 680, 820, 910]) {
      expect(valuesOf('E192')).not.toContain(value);
      expect(seriesOf(value)).not.toBeNull();
    }
  });

  it('gives nothing for numbers that no part has', () => {
    for (const value of [0, -47, Number.NaN, Infinity, 4.7123]) expect(seriesOf(value)).toBeNull();
    expect(neighbours(0, 'E24')).toBeNull();
  });
});
