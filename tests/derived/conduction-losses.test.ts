import { describe, expect, it } from 'vitest';
import { conductionAt } from '../../src/derived/conduction-at.ts';
import type { LossItem } from '../../src/derived/derived.ts';
import { loadPoint } from '../../src/derived/load-point.ts';
import { bulkFigures } from '../../src/derived/bulk-figures.ts';
import { inputFigures } from '../../src/derived/input-figures.ts';
import { factValue } from '../../src/derived/fact-value.ts';
import type { Entry, Part, Stage } from '../../src/entry/entry.ts';
import { exact } from '../../src/values/exact.ts';
import { isMissing } from '../../src/values/value.ts';
import { published } from '../published/published.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

/** A buck from 12 V to a port at 5 V 6 A, with a ripple that is given as nothing, so that the current is the output current. */
function buck(parts: readonly Part[], more: Stage['parameters'] = {}): Entry {
  const parameters = { 'ripple current': fact('0 A', 'current', 's.r'), input: fact('12 V', 'voltage', 's.i'), ...more };
  return anEntry(supply('DC', '12 V'), [portWith('C1', [5, 6])], { stages: [stage('out', 'buck', parameters)], parts });
}

/** Conduction at 12 V in, 5 V 6 A out, with an efficiency of 95 %. */
function losses(entry: Entry, line = '12.0 V'): readonly LossItem[] {
  const output = {
    voltage: factValue(fact('5.00 V', 'voltage', 'e')),
    current: factValue(fact('6.00 A', 'current', 'e')),
    power: factValue(fact('30.0 W', 'power', 'e')),
    name: '5 V 6 A',
  };
  const { power } = output;
  const input = inputFigures(entry, power);
  const at = loadPoint(entry, { line: factValue(fact(line, 'voltage', 'e')), efficiency: exact('ratio', 0.95) }, new Map([['C1', output]]));
  return conductionAt(entry, { power, input, bulk: bulkFigures(entry, input), shares: null }, at);
}

function printed(items: readonly LossItem[]): readonly (readonly [string, number, number, number])[] {
  return items.map(({ references, loss }) => {
    if (isMissing(loss)) throw new Error(loss.reason);
    return [references.join(', '), loss.low, loss.nominal, loss.high];
  });
}

describe('two switches that take turns', () => {
  it('under one key carry the current once, not twice', () => {
    // 6 A squared in 1.4 × 8 mΩ: 0.4032 W (bc).
    const [pair, ...more] = printed(losses(buck([part('Q1, Q2', 'buck-switch', 'out', '30 V, 8 mΩ')])));
    expect(more).toEqual([]);
    expect(published(pair?.[2] ?? 0, '0.4032 W', 'power').agrees).toBe(true);
  });

  it('under two keys are one loss between that of either, since nobody says which is the upper one', () => {
    const parts = [part('Q1', 'buck-switch', 'out', '30 V, 8 mΩ'), part('Q2', 'buck-switch', 'out', '30 V, 3 mΩ')];
    const [pair, ...more] = printed(losses(buck(parts)));
    expect(more).toEqual([]);
    expect(pair?.[0]).toBe('Q1, Q2');
    // All in 1.2 × 3 mΩ: 0.1296 W; all in 1.6 × 8 mΩ: 0.4608 W (bc).
    expect(published(pair?.[1] ?? 0, '0.1296 W', 'power').agrees).toBe(true);
    expect(published(pair?.[3] ?? 0, '0.4608 W', 'power').agrees).toBe(true);
  });

  it('are a pair too where the lower one is called a synchronous rectifier', () => {
    const parts = [part('Q1', 'buck-switch', 'out', '30 V, 8 mΩ'), part('Q2', 'synchronous-rectifier', 'out', '30 V, 3 mΩ')];
    expect(printed(losses(buck(parts))).map(([names]) => names)).toEqual(['Q1, Q2']);
  });
});

describe('the copper of a choke', () => {
  it('is heated by the current of the inductor', () => {
    // 6 A squared in 1.3 × 10 mΩ: 0.468 W (bc).
    const [choke] = printed(losses(buck([part('L1', 'inductor', 'out', '10 µH 10 mΩ')])));
    expect(published(choke?.[2] ?? 0, '0.468 W', 'power').agrees).toBe(true);
  });

  it.each([
    // 30 W / 0.95 at 100 V: 0.3158 A of line current, in critical conduction a triangle with a peak of 2√2 times that over the root of six.
    [null, '0.01729 W'],
    ['continuous conduction', '0.01296 W'],
  ])('of a PFC in %s carries the line current or its triangle', (mode, watts) => {
    const pfc = anEntry(supply('AC', '100-240 V'), [portWith('C1', [5, 6])], {
      stages: [
        stage('pfc', 'boost-pfc', { bus: fact('390 V', 'voltage', 'b') }, { mode, feeds: ['main'] }),
        stage('main', 'flyback', {}, { feeds: ['C1'] }),
      ],
      parts: [part('L3', 'pfc-inductor', 'pfc', '240 µH 100 mΩ')],
    });
    const [choke] = printed(losses(pfc, '100 V'));
    expect(published(choke?.[2] ?? 0, watts, 'power').agrees).toBe(true);
  });

  it('counts nothing where nobody gave its resistance', () => {
    expect(losses(buck([part('L1', 'inductor', 'out', '10 µH')]))).toEqual([]);
  });
});

describe('rectifiers behind a resonant half bridge', () => {
  const of = (more: Partial<Stage>, rectifiers: string): readonly LossItem[] =>
    losses(
      anEntry(supply('AC', '100-240 V'), [portWith('C1', [5, 6])], {
        stages: [stage('main', 'llc-half-bridge', { bus: fact('390 V', 'voltage', 'b') }, { feeds: ['C1'], ...more })],
        parts: [part(rectifiers, 'synchronous-rectifier', 'main', '40 V, 4 mΩ')],
      }),
    );

  it('two behind a centre tap carry a half wave each', () => {
    // 6 A times π/4 squared in 1.4 × 4 mΩ, twice: 0.2487 W (bc).
    const [pair] = printed(of({ turns: [33, 1, 1] }, 'Q5, Q6'));
    expect(published(pair?.[2] ?? 0, '0.2487 W', 'power').agrees).toBe(true);
  });

  it('four in a bridge lose twice as much as two of the same behind a centre tap', () => {
    const [four] = printed(of({ turns: [33, 1], mode: 'full bridge' }, 'Q5, Q6, Q7, Q8'));
    expect(published(four?.[2] ?? 0, '0.4974 W', 'power').agrees).toBe(true);
  });

  it('lose an unknown amount where nobody knows how the secondary is wound', () => {
    expect(of({ turns: [33, 1] }, 'Q5, Q6')[0]?.loss).toMatchObject({ needs: ['turns of main'] });
  });
});

describe('on-resistance when hot', () => {
  it.each([
    ['GaN', 1.6],
    ['SiC', 1.3],
    [null, 1.8],
  ])('of a 650 V switch of %s is %d times the marked one', (technology, factor) => {
    const [one] = printed(losses(buck([part('Q1, Q2', 'buck-switch', 'out', '650 V, 10 mΩ', { technology })])));
    // 36 A² in 10 mΩ.
    expect(Math.abs((one?.[2] ?? 0) / (0.36 * factor) - 1)).toBeLessThan(1e-9);
  });
});
