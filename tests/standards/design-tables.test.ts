import { describe, expect, it } from 'vitest';
import { AIR_PROPERTIES, airAt } from '../../src/standards/air-properties.ts';
import { BULK_CAPACITANCE_RULE, POWER_FACTOR_WITHOUT } from '../../src/standards/bulk-capacitance-rule.ts';
import { BULK_RIPPLE_RATINGS, CORE_THERMAL_RESISTANCES } from '../../src/standards/bulk-ripple-ratings.ts';
import { CABLE_DROP, largestCableResistance } from '../../src/standards/cable-drop.ts';
import {
  CONTINUOUS_SHARES,
  FUSE_GATES,
  meltingIntegralOf,
  PULSE_SHAPES,
  PULSE_SHARES,
  pulseShare,
  TIME_LAG_FUSES,
  TIME_LAG_GATES,
} from '../../src/standards/fuse-behaviour.ts';
import { ALTITUDE_FACTORS } from '../../src/standards/insulation/altitude.ts';
import { IMPULSE_CLEARANCE, RECURRING_CLEARANCE } from '../../src/standards/insulation/clearance.ts';
import { COATED_BOARD, coatedBoardSeparation } from '../../src/standards/insulation/coated-board.ts';
import { CREEPAGE, OLDER_CREEPAGE } from '../../src/standards/insulation/creepage.ts';
import { GROOVE_WIDTHS } from '../../src/standards/insulation/groove.ts';
import { LABORATORY_DISTANCES, SOLID_INSULATION } from '../../src/standards/insulation/laboratory-distances.ts';
import { RATED_IMPULSE } from '../../src/standards/insulation/rated-impulse.ts';
import { ON_RESISTANCE_FACTORS, onResistanceRange } from '../../src/standards/on-resistance-factors.ts';
import { BURN_TIMES, TOUCH_TEMPERATURES, touchLimit } from '../../src/standards/touch-temperature.ts';
import {
  VARISTOR_MARGIN,
  VARISTOR_RATINGS,
  VARISTOR_VOLTAGE_HIGH_LINE,
  VARISTOR_VOLTAGE_TO_EARTH,
  varistorRatingFor,
} from '../../src/standards/varistor-rules.ts';
import type { Source } from '../../src/values/value.ts';

describe('tables of design practice', () => {
  it('name their sources', () => {
    const sources: readonly Source[] = [
      BULK_CAPACITANCE_RULE,
      ...POWER_FACTOR_WITHOUT,
      BULK_RIPPLE_RATINGS,
      CORE_THERMAL_RESISTANCES,
      CABLE_DROP,
      ...CONTINUOUS_SHARES,
      FUSE_GATES,
      PULSE_SHAPES,
      PULSE_SHARES,
      TIME_LAG_FUSES,
      ...ON_RESISTANCE_FACTORS,
      TOUCH_TEMPERATURES,
      AIR_PROPERTIES,
      ALTITUDE_FACTORS,
      IMPULSE_CLEARANCE,
      RECURRING_CLEARANCE,
      CREEPAGE,
      OLDER_CREEPAGE,
      GROOVE_WIDTHS,
      RATED_IMPULSE,
      ...LABORATORY_DISTANCES,
      SOLID_INSULATION,
      BURN_TIMES,
      TIME_LAG_GATES,
      COATED_BOARD,
      VARISTOR_MARGIN,
      VARISTOR_RATINGS,
      VARISTOR_VOLTAGE_HIGH_LINE,
      VARISTOR_VOLTAGE_TO_EARTH,
    ].map((row) => row.source);
    for (const source of sources) expect(source.title.length * source.section.length, source.title).toBeGreaterThan(0);
  });

  it('superjunction parts at 150 °C have 2.1 to 2.62 times their cold resistance', () => {
    const range = onResistanceRange('superjunction', 150);
    expect([range?.low, range?.high].map((factor) => Math.round((factor ?? 0) * 100) / 100)).toEqual([2.1, 2.62]);
    expect(onResistanceRange('superjunction', 60)).toBeNull();
  });

  it('a fuse of 5 A melts at less than one of 4 A: the column is never interpolated', () => {
    expect(meltingIntegralOf(5)).toBeLessThan(meltingIntegralOf(4) ?? 0);
    expect(meltingIntegralOf(4.5)).toBeNull();
  });

  it('cold resistance falls with the rating', () => {
    const ohms = TIME_LAG_FUSES.rows.map((row) => row.ohms);
    expect([...ohms].sort((a, b) => b - a)).toEqual(ohms);
  });

  it('pulses take the row that covers them', () => {
    expect([pulseShare(1), pulseShare(5000), pulseShare(100_000), pulseShare(1e6)]).toEqual([0.48, 0.29, 0.22, null]);
  });

  it('a 3 A cable has at most 250 mΩ both ways, a 5 A cable 150 mΩ', () => {
    expect([largestCableResistance(3), largestCableResistance(5)]).toEqual([0.25, 0.15]);
  });

  it('three cells of plastic were read; everything else is from memory', () => {
    expect(touchLimit('plastic', 'up to ten seconds')).toEqual({ celsius: 77, standing: 'secondary' });
    const cells = TOUCH_TEMPERATURES.rows.flatMap((row) => Object.values(row.limits));
    expect(cells.filter((cell) => cell.standing !== 'memory')).toHaveLength(3);
  });

  it('a longer touch never allows a hotter surface, and plastic never less than metal', () => {
    const rows = TOUCH_TEMPERATURES.rows;
    for (const [index, row] of rows.entries()) {
      const shorter = rows[index + 1];
      if (shorter !== undefined) expect(shorter.limits.metal.celsius).toBeGreaterThan(row.limits.metal.celsius);
      expect(row.limits.plastic.celsius).toBeGreaterThanOrEqual(row.limits.metal.celsius);
    }
  });

  it('air between 303 K and 350 K is between their rows, and goes on below the first', () => {
    expect(airAt(326.5).conductivity).toBeGreaterThan(0.0265);
    expect(airAt(326.5).conductivity).toBeLessThan(0.03);
    expect(airAt(295).viscosity).toBeLessThan(16.2e-6);
  });

  it('the ripple a can carries grows with its size at one capacitance', () => {
    const of33 = BULK_RIPPLE_RATINGS.rows.filter((row) => row.farads === 33e-6);
    expect(of33.map((row) => row.amperes)).toEqual([0.385, 0.45]);
  });

  it('230 V asks for a varistor of 275 V, 120 V for one of 150 V', () => {
    expect([varistorRatingFor(230), varistorRatingFor(120), varistorRatingFor(600)]).toEqual([275, 150, null]);
  });

  it('a coated board needs 0.8 mm at 320 V, twice as much reinforced', () => {
    expect([coatedBoardSeparation(320, 'basic'), coatedBoardSeparation(320, 'reinforced'), coatedBoardSeparation(500, 'basic')]).toEqual([
      0.8,
      1.6,
      null,
    ]);
  });

  it('a longer touch burns at a lower temperature, and every touch limit read stays below the burn of its time', () => {
    const plastic = BURN_TIMES.rows.map((row) => row.plastic);
    expect([...plastic].sort((a, b) => b - a)).toEqual(plastic);
    expect(touchLimit('plastic', 'up to ten seconds')?.celsius).toBeLessThan(82);
    expect(touchLimit('plastic', 'held')?.celsius).toBeLessThan(74);
  });

  it('a time-lag fuse opens sooner the more it is overloaded', () => {
    const longest = TIME_LAG_GATES.rows.flatMap((row) => row.longest ?? []);
    expect([...longest].sort((a, b) => b - a)).toEqual(longest);
  });
});
