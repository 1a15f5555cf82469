import { describe, expect, test } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import { sustainedWords } from '../../../src/derived/heat/sustained-words.ts';
import { checkText } from '../../checks/read-example.ts';

function said(points: string): readonly string[] {
  const text = `---\ntitle: A charger\ndevice: { maker: Larkmoor, model: LM-Q100, kind: desktop charger }\nmeasurements: { sustained power: ${points} }\n---\n`;
  const { entry, reading } = checkText('charger', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  return derive(entry).sustained.map(sustainedWords);
}

describe('power over time, from points', () => {
  // Thermal fold-back in phases as in TI SLVUBX5C, section 4.4: 100 W at first, 65 W from 12 min on.
  test('100 W, then 65 W from 12 min to 30 min: what is peak, what is sustained, when it dropped, in which air', () => {
    expect(
      said('[{ value: 100 W, after: 0 min, ambient: 25 °C }, { value: 65 W, after: 12 min }, { value: 65 W, after: 30 min }]'),
    ).toEqual(['100 W peak, 65 W sustained, drop at 12 min, ambient 25 °C']);
  });

  test('a test shorter than 30 minutes: sustained not shown', () => {
    expect(said('{ 0 min: 100 W, 29 min: 100 W }')).toEqual(['100 W peak, sustained not shown, no drop, ambient not given']);
    expect(said('{ 0 min: 100 W, 30 min: 100 W }')).toEqual(['100 W peak, 100 W sustained, no drop, ambient not given']);
  });

  test('a dip that comes back is no drop, and the order of writing does not matter', () => {
    expect(said('{ 40 min: 99 W, 0 min: 100 W, 12 min: 65 W }')).toEqual(['100 W peak, 99 W sustained, no drop, ambient not given']);
  });

  test('another voltage is another test: 60 W at 20 V and 27 W at 9 V are no fold-back', () => {
    const at = (volts: number, watts: number): string =>
      [0, 30]
        .map((minutes) => `{ value: ${String(watts)} W, after: ${String(minutes)} min, output: ${String(volts)} V, ambient: 25 °C }`)
        .join(', ');
    expect(said(`[${at(20, 60)}, ${at(9, 27)}]`)).toEqual([
      '60 W peak, 60 W sustained, no drop, ambient 25 °C',
      '27 W peak, 27 W sustained, no drop, ambient 25 °C',
    ]);
  });

  test('each port has a test of its own; what a system reports is none', () => {
    expect(
      said(
        '[{ value: 65 W, after: 45 min, port: C1 }, { value: 30 W, after: 45 min, port: C2 }, { value: 99 W, after: 50 min, port: C1, method: reported by the operating system }]',
      ),
    ).toEqual(['65 W peak, 65 W sustained, no drop, ambient not given', '30 W peak, 30 W sustained, no drop, ambient not given']);
  });
});
