import { describe, expect, it } from 'vitest';
import type { EfficiencyPoint, Fact } from '../../src/entry/entry.ts';
import { reading } from './reading.ts';

const PORTS = 'ports: { C1: { connector: USB-C }, C2: { connector: USB-C }, A1: { connector: USB-A } }\n';

function read(run: string): { readonly points: readonly EfficiencyPoint[]; readonly findings: readonly string[] } {
  const { entry, findings } = reading(`${PORTS}measurements: { efficiency: [${run}] }`);
  return { points: entry.efficiency, findings };
}

const number = (fact: Fact | null | undefined): number | null => fact?.quantity.nominal ?? null;

function loadsOf(point: EfficiencyPoint | undefined): readonly (readonly (string | number | null)[])[] {
  return (point?.loads ?? []).map(({ port, output, measuredOutput, current, power }) => [
    port,
    ...[output, measuredOutput, current, power].map(number),
  ]);
}

const run = (points: string, about = 'port: C1 + A1, line: 230 V, output: 20 V + 9 V'): string => `{ ${about}, points: { ${points} } }`;

describe('a point of several ports', () => {
  it('has volts and amperes of each, then the power that went into all of them', () => {
    const { points, findings } = read(run('50 %: "20.03 V 0.9 A + 8.99 V 0.5 A, 25.4 W 88.6 %"'));
    expect(findings).toEqual([]);
    expect(loadsOf(points[0])).toEqual([
      ['C1', 20, 20.03, 0.9, null],
      ['A1', 9, 8.99, 0.5, null],
    ]);
    expect([points[0]?.port, number(points[0]?.load), number(points[0]?.input), number(points[0]?.efficiency)]).toEqual([
      'C1 + A1',
      0.5,
      25.4,
      0.886,
    ]);
  });

  it('may be named by the current of each, and give their volts alone', () => {
    const { points, findings } = read(run('0.9 A + 0.5 A: "20.03 V + 8.99 V, 25.4 W"'));
    expect(findings).toEqual([]);
    expect(loadsOf(points[0])).toEqual([
      ['C1', 20, 20.03, 0.9, null],
      ['A1', 9, 8.99, 0.5, null],
    ]);
  });

  it('may give the watts of each: the last ones behind them are what went in', () => {
    const { points } = read(run('100 %: "36 W + 9.2 W, 50.1 W"'));
    expect(loadsOf(points[0]).map(([port, , , , watts]) => [port, watts])).toEqual([
      ['C1', 36],
      ['A1', 9.2],
    ]);
    expect(number(points[0]?.input)).toBe(50.1);
  });

  it('may say no more than input power or efficiency', () => {
    const { points, findings } = read(run('100 %: 91.2 %, 60 W: 66.1 W'));
    expect(findings).toEqual([]);
    expect(points.map(({ efficiency, input, load }) => [number(load), number(efficiency), number(input)])).toEqual([
      [1, 0.912, null],
      [60, null, 66.1],
    ]);
    expect(loadsOf(points[0])).toEqual([
      ['C1', 20, null, null, null],
      ['A1', 9, null, null, null],
    ]);
  });

  it('takes one voltage for all ports, commas for plus signs, and evidence as its last word', () => {
    const { points, findings } = read(run('50 %: "5.02 V 1 A + 5.01 V 1 A, 12.0 W printed"', 'port: "C1, C2", output: 5 V'));
    expect(findings).toEqual([]);
    expect(loadsOf(points[0])).toEqual([
      ['C1', 5, 5.02, 1, null],
      ['C2', 5, 5.01, 1, null],
    ]);
    expect(points[0]?.loads.map(({ current }) => current?.evidence)).toEqual(['printed', 'printed']);
    expect(number(points[0]?.output)).toBe(5);
  });

  it('is read as a single point too', () => {
    const { points, findings } = read('{ port: C1 + A1, output: 20 V + 9 V, current: 0.9 A + 0.5 A, input: 25.4 W }');
    expect(findings).toEqual([]);
    expect(loadsOf(points[0]).map(([port, , , amps]) => [port, amps])).toEqual([
      ['C1', 0.9],
      ['A1', 0.5],
    ]);
  });
});

describe('a load that was not held', () => {
  it.each([
    ['of several ports', run('100 %: not sustained, 75 %: "15 V 1 A + 9 V 1 A, 27 W"')],
    ['with what happened', run('100 %: "not sustained, C1 fell back to 12 V"')],
    ['by the current of each', run('2 A + 1 A: Not sustained')],
    ['of one port', '{ port: C1, output: 20 V, points: { 100 %: "not sustained: it reset" } }'],
    ['as a single point', '{ port: C1 + A1, output: 20 V, load: 100 %, efficiency: not sustained }'],
    ['as a single point of one port', '{ port: C1, output: 20 V, load: 100 %, efficiency: not sustained }'],
  ])('%s is said in place of a result', (_, text) => {
    const { points, findings } = read(text);
    expect(findings).toEqual([]);
    const [point] = points;
    expect(point?.notSustained?.startsWith('not sustained')).toBe(true);
    expect([point?.input, point?.efficiency, point?.measuredOutput]).toEqual([null, null, null]);
  });

  it('keeps the words and the load that was set', () => {
    const [point] = read(run('2 A + 1 A: "not sustained, C1 fell back to 12 V"')).points;
    expect(point?.notSustained).toBe('not sustained, C1 fell back to 12 V');
    expect(loadsOf(point).map(([port, , , amps]) => [port, amps])).toEqual([
      ['C1', 2],
      ['A1', 1],
    ]);
  });

  it('is no word of the author’s own: others are reported', () => {
    expect(read(run('100 %: unsustainable')).findings).toHaveLength(1);
    expect(read(run('100 %: not sustainedly 3 W')).findings).toHaveLength(1);
    expect(read(run('100 %: "20 V 1 A + 9 V 0.9 A, fell to 17 W"')).findings[0]).toContain('"fell');
    expect(read('{ port: C1, output: 20 V, points: { 100 %: fell to 17 W } }').findings[0]).toContain('is no figure of a point');
    expect(read('{ port: C1, output: 20 V, points: { 100 %: fine } }').findings).toHaveLength(1);
    expect(read('{ port: C1, output: 20 V, points: { 100 %: 20 V 1 A 21 W 45 °C } }').findings[0]).toContain('"45 °C" has no place');
  });
});

describe('what does not match is said where it stands', () => {
  it.each([
    ['an unknown port', run('50 %: 90 %', 'port: C1 + C9, output: 20 V'), 'There is no port "C9".'],
    ['a port named twice', run('50 %: 90 %', 'port: C1 + C1, output: 20 V'), 'C1 stands twice.'],
    ['too few amounts', run('50 %: "20 V 1 A, 22 W"'), 'C1 + A1 are 2 and "20 V 1 A, 22 W" has 1 amount.'],
    ['too many amounts', run('50 %: "20 V 1 A + 9 V 1 A + 5 V 1 A, 40 W"'), 'has 3 amounts.'],
    ['too many currents', run('1 A + 1 A + 1 A: 40 W'), 'C1 + A1 are 2 and "1 A + 1 A + 1 A" has 3 currents.'],
    ['one current for two ports', run('1 A: 40 W'), 'C1 + A1 are 2 and "1 A" has 1 current.'],
    ['too many voltages', run('50 %: 90 %', 'port: C1 + A1, output: 20 V + 9 V + 5 V'), 'has 3 voltages.'],
    ['a figure without a place', run('50 %: "20 V 1 A 3 W + 9 V 1 A, 33 W"'), '"3 W" has no place beside what else is written of C1.'],
    ['a word that is no load', run('half: 90 %'), '"half" is no load of C1 + A1.'],
  ])('%s', (_, text, expected) => {
    const { findings } = read(text);
    expect(findings.filter((finding) => finding.includes(expected))).toHaveLength(1);
    expect(findings).toHaveLength(1);
  });
});
