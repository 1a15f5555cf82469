import { describe, expect, test } from 'vitest';
import { powerCourse } from '../../src/logs/power-course.ts';

/** A power over time: rows every `step` seconds from 0 to `end`. */
function course(end: number, step: number, watts: (second: number) => number): ReturnType<typeof powerCourse> {
  const time = Float64Array.from({ length: Math.floor(end / step) + 1 }, (_, row) => row * step);
  return powerCourse(time, time.map(watts));
}

describe('peak and sustained power of a log', () => {
  test('the collected case: 100 W at 0 min, 65 W at 12 min and at 30 min', () => {
    const found = powerCourse(Float64Array.of(0, 720, 1800), Float64Array.of(100, 65, 65));
    expect(found).toEqual({ peak: 100, loadFrom: 0, loadTo: 1800, atTheEnd: 65, droppedAfter: 720 });
  });

  test('the same with a row a second, and with ten a second', () => {
    for (const step of [1, 0.1]) {
      const found = course(3600, step, (second) => (second < 720 ? 100 : 65));
      expect(Math.abs((found?.droppedAfter ?? NaN) - 720)).toBeLessThanOrEqual(step);
      // Thousands of equal rows summed and divided lose a few of sixteen digits.
      expect(Math.abs((found?.atTheEnd ?? NaN) / 65 - 1)).toBeLessThan(1e-11);
      expect(Math.abs((found?.peak ?? NaN) / 100 - 1)).toBeLessThan(1e-11);
    }
  });

  test('inrush into the load is no peak: a peak lasts ten seconds', () => {
    const found = course(120, 0.1, (second) => (second < 0.3 ? 180 : 60));
    expect(found?.peak).toBeLessThan(66);
    expect(found?.droppedAfter).toBeNull();
  });

  test('regulation within 5 % is no fold-back, and neither is a dip of half a minute', () => {
    expect(course(3600, 1, (second) => 100 - (4 * second) / 3600)?.droppedAfter).toBeNull();
    expect(course(3600, 1, (second) => (second > 900 && second < 930 ? 60 : 100))?.droppedAfter).toBeNull();
  });

  test('a fold-back in steps is found at its first step', () => {
    const found = course(3600, 1, (second) => (second < 600 ? 140 : second < 1500 ? 100 : 65));
    expect([found?.droppedAfter, found?.atTheEnd]).toEqual([600, 65]);
  });

  test('time under load begins when the load comes on and ends when it goes off', () => {
    const found = course(4000, 1, (second) => (second >= 30 && second <= 2430 ? 45 : 0.02));
    expect([found?.loadFrom, found?.loadTo, found?.droppedAfter]).toEqual([30, 2430, null]);
    expect(found?.atTheEnd).toBe(45);
  });

  test('blank cells are passed over, and a log without load has no course', () => {
    expect(powerCourse(Float64Array.of(0, 900, 1000, 1800), Float64Array.of(50, NaN, 50, 50))?.atTheEnd).toBe(50);
    expect(powerCourse(Float64Array.of(0, 1, 2), new Float64Array(3))).toBeNull();
  });
});
