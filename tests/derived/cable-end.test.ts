import { describe, expect, it } from 'vitest';
import { cableDropAt, lowestAtCableEnd } from '../../src/derived/cable-end.ts';
import type { EfficiencyPoint } from '../../src/entry/entry.ts';
import { isMissing } from '../../src/values/value.ts';
import { reading } from '../entry/reading.ts';

function pointOf(cable: string, amps: string): EfficiencyPoint {
  const yaml = `ports:\n  C1: { connector: USB-C }\nmeasurements:\n  efficiency:\n    - { line: 230 V, output: 5 V, port: C1, at: cable end, cable: "${cable}", points: { ${amps}: 4.6 V 20 W } }`;
  const [point] = reading(yaml).entry.efficiency;
  if (point === undefined) throw new Error(cable);
  return point;
}

function dropOf(cable: string, amps: string): string | null {
  const drop = cableDropAt(pointOf(cable, amps));
  return drop === null || isMissing(drop) ? null : drop.nominal.toFixed(3);
}

describe('the drop of a cable', () => {
  // Open data set of USB cable voltage drop: AWG 20, 1 m: 0.200 V at 3 A, 0.333 V at 5 A.
  it.each([
    ['1 m AWG 20', '3 A', '0.200'],
    ['1 m, AWG20, marked 5 A', '5 A', '0.333'],
    ['100 cm 20 AWG', '3 A', '0.200'],
    ['2 m AWG 20', '3 A', '0.400'],
  ])('%s at %s is %s V', (cable, amps, volts) => {
    expect(dropOf(cable, amps)).toBe(volts);
  });

  it.each(['1 m, marked 5 A', 'AWG 20', 'the white one'])('is not guessed from “%s”', (cable) => {
    expect(dropOf(cable, '3 A')).toBeNull();
  });

  it('may leave 4.00 V of 5 V at the far end', () => {
    const lowest = lowestAtCableEnd(pointOf('1 m AWG 20', '3 A'));
    expect(lowest === null || isMissing(lowest) ? null : lowest.nominal.toFixed(2)).toBe('4.00');
  });
});
