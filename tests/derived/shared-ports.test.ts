import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Derived } from '../../src/derived/derived.ts';
import { isMissing, type Known } from '../../src/values/value.ts';
import { checkText } from '../checks/read-example.ts';
import { published } from '../published/published.ts';

const PORTS = `ports:
  C3: { connector: USB-C, power: 30 W, offers: [5 V 3 A, 9 V 3 A, 15 V 2 A] }
  A1: { connector: USB-A, power: 18 W, offers: [5 V 3 A, 9 V 2 A] }`;

function derived(more: string, ports = PORTS): Derived {
  const head =
    'title: Invented\ndevice: { maker: Larkmoor, model: LM-Q65, kind: wall charger }\nnameplate: { input: 100-240 V~ 50/60 Hz 1.6 A, total: 65 W }';
  const { entry, reading } = checkText('lm-q65', `---\n${head}\n${ports}\n${more}\n---\n\nText.\n`);
  if (entry === null) throw new Error(JSON.stringify(reading));
  return derive(entry);
}

function figure({ operating }: Derived, name: string): Known {
  const found = operating.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no ${name} among ${operating.map((one) => one.name).join('; ')}`);
  return found.value;
}

function agrees(known: Known, printed: string): boolean {
  return !isMissing(known) && published(known.nominal, printed, known.dimension).agrees;
}

describe('one buck that feeds two ports', () => {
  const BUCK = 'out: { is: buck, input: 22 V, ripple current: 0.0 A, feeds: [C3, A1] }';
  const rail = (sharing: string, buck = BUCK): Derived =>
    derived(`${sharing}\nstages: { main: { is: flyback, turns: 34:6, output: 22 V }, ${buck} }`);
  const peak = (sharing: string, buck = BUCK): Known => figure(rail(sharing, buck), 'peak current of the inductor');

  it('gives both what their pool allows, and one alone what its own contract says', () => {
    // A pool of 15 W is 3 A at 5 V: no more than one port draws alone. One of 24 W is 4.8 A at 5 V, above the 3 A of any single contract.
    expect(agrees(peak('sharing: { total: 65 W, allocations: { C3 + A1: 15 W shared } }'), '3.0 A')).toBe(true);
    expect(agrees(peak('sharing: { total: 65 W, allocations: { C3 + A1: 24 W shared } }'), '4.8 A')).toBe(true);
  });

  it('counts separate shares together, and never more than the ports offer at one voltage', () => {
    expect(agrees(peak('sharing: { total: 65 W, allocations: { C3 + A1: 15 W + 12 W } }'), '5.4 A')).toBe(true);
    // 48 W would be 9.6 A at 5 V; both ports offer 3 A there, and 3 A and 2 A at 9 V.
    expect(agrees(peak('sharing: { total: 65 W, allocations: { C3 + A1: 30 W + 18 W } }'), '6.0 A')).toBe(true);
  });

  it('ports that keep their own limits whatever the others do share nothing: the sum of what they offer', () => {
    expect(agrees(peak('sharing: { policy: assured, total: 65 W }'), '6.0 A')).toBe(true);
  });

  it('is withheld with the set to measure where nobody says what they draw together', () => {
    const known = peak('sharing: { total: 65 W, allocations: { C3: 30 W } }');
    expect(isMissing(known) && known.needs).toContain('share of C3 + A1');
  });

  it('or takes the power that the block is rated for', () => {
    expect(agrees(peak('sharing: { total: 65 W, allocations: { C3: 30 W } }', BUCK.replace('feeds', 'power: 20 W, feeds')), '4.0 A')).toBe(
      true,
    );
  });

  it('a port whose offers nobody read is bounded by the shared power alone', () => {
    // A car charger of one published note: both ports in use 5 V only, 4.8 A together, which is 24 W.
    const unread = PORTS.replace(', offers: [5 V 3 A, 9 V 2 A]', '');
    const stages = `stages: { ${BUCK} }`;
    const known = figure(derived(`sharing: { allocations: { C3 + A1: 24 W shared } }\n${stages}`, unread), 'peak current of the inductor');
    expect(agrees(known, '4.8 A')).toBe(true);
  });
});

describe('several sense resistors in one stage', () => {
  const limits = (
    parts: string,
    stage = 'is: flyback, turns: 34:6, sense threshold: 0.9 V, feeds: [C3, A1]',
  ): readonly (readonly [string, string])[] =>
    derived(`stages: { main: { ${stage} } }\nparts:\n  main:\n${parts}`)
      .operating.filter(({ name }) => name.startsWith('current limit'))
      .map(({ name, value }) => [name, isMissing(value) ? value.needs.join() : `${value.nominal.toPrecision(3)} A`]);
  const shunt = (keys: string, more = ''): string => `    ${keys}: { role: current-sense resistor, rating: 0.36 Ω${more} }\n`;

  it.each([
    ['one', shunt('R1'), [['current limit of the sense resistor', '2.50 A']]],
    ['two side by side', shunt('R1, R2', ', arrangement: parallel'), [['current limit of R1, R2 in parallel', '5.00 A']]],
    ['three of a count', shunt('R1', ', count: 3, arrangement: parallel'), [['current limit of R1 in parallel', '7.50 A']]],
    ['two in a row', shunt('R1, R2', ', arrangement: series'), [['current limit of R1, R2 in series', '1.25 A']]],
    ['one for each phase', shunt('R1, R2', ', arrangement: separate'), [['current limit of R1, R2, each for itself', '2.50 A']]],
    [
      'two keys side by side',
      shunt('R1', ', arrangement: parallel') + shunt('R2', ', arrangement: parallel'),
      [['current limit of R1, R2 in parallel', '5.00 A']],
    ],
    ['one of them at the output', shunt('R1') + shunt('R9', ', note: output side'), [['current limit of the sense resistor', '2.50 A']]],
  ])('%s', (_, parts, expected) => {
    expect(limits(parts)).toEqual(expected);
  });

  it.each([
    ['two without a word', shunt('R1, R2')],
    ['two keys without a word', shunt('R1') + shunt('R2')],
    ['two keys of two minds', shunt('R1', ', arrangement: parallel') + shunt('R2', ', arrangement: separate')],
  ])('%s: withheld, and the arrangement asked for', (_, parts) => {
    expect(limits(parts)).toEqual([['current limit of the sense resistors', 'arrangement of R1, R2']]);
  });

  it('behind the barrier nothing is usual, so only a given threshold gives a limit', () => {
    expect(limits(shunt('R1'), 'is: buck, input: 22 V, feeds: [C3, A1]')).toEqual([]);
    expect(limits(shunt('R1'), 'is: buck, input: 22 V, sense threshold: 50 mV, feeds: [C3, A1]')[0]?.[1]).toBe('0.139 A');
  });
});
