import { describe, expect, test } from 'vitest';
import { additionsOf } from '../../src/sharing/added-device.ts';
import { capacityOf } from '../../src/sharing/capacity-of.ts';
import { capacitySentence } from '../../src/sharing/capacity-words.ts';
import { knownOrders } from '../../src/sharing/known-orders.ts';
import { readerAnswers, type ReaderAnswers } from '../../src/sharing/reader-answers.ts';
import { setsToMeasureNext } from '../../src/sharing/sets-to-measure-next.ts';
import { shareMatrix } from '../../src/sharing/share-matrix-of.ts';
import type { ShareMatrix } from '../../src/sharing/share-matrix.ts';
import type { Entry, Sharing } from '../../src/entry/entry.ts';
import { allocation, entryWithPorts, outputPort, sharing, watts } from './entry-with-ports.ts';

function total(power: string): Pick<Sharing, 'total'> {
  return { total: { quantity: watts(power), evidence: 'printed', path: ['sharing', 'total'] } };
}

function matrixOf(entry: Entry): ShareMatrix {
  const matrix = shareMatrix(entry);
  if (matrix === null) throw new Error('the entry has output ports');
  return matrix;
}

function answersOf(entry: Entry): ReaderAnswers {
  return readerAnswers(matrixOf(entry), entry);
}

const said = (entry: Entry): string[] =>
  answersOf(entry).additions.steps.map(
    ({ before, added, port, from, to, fall }) => `${before.key} + ${added}: ${port} ${from.power.nominal} to ${to.power.nominal}, ${fall}`,
  );

/** 65 W in all; C2 and A1 draw on one pool of 15 W. */
const THREE = entryWithPorts(
  [outputPort('C1', '65 W'), outputPort('C2', '30 W'), outputPort('A1', '18 W')],
  sharing(
    [
      allocation({ C1: '45 W', C2: '20 W' }),
      allocation({ C1: '45 W', A1: '18 W' }),
      allocation({ 'C2/A1': '15 W' }),
      allocation({ C1: '45 W', 'C2/A1': '15 W' }),
    ],
    { ...total('65 W'), onNewPlugAt: { C1: 'keeps' } },
  ),
);

describe('what a reader asks of the matrix', () => {
  test('full power is at the only port that reaches the total alone', () => {
    expect(answersOf(THREE).fullPower).toMatchObject({ ports: ['C1'], sets: [] });
  });

  test('full power that no port reaches alone is named with the smallest sets that do', () => {
    const two = entryWithPorts([outputPort('A', '60 W'), outputPort('B', '45 W')], sharing([], { policy: 'assured', ...total('105 W') }));
    expect(answersOf(two).fullPower?.sets.map(({ key }) => key)).toEqual(['A + B']);
  });

  test('each port alone, with one more in the worst case, and with all in use', () => {
    const ports = answersOf(THREE).ports.map(({ port, alone, withOneMore, inAll }) => [
      port,
      alone?.power.nominal,
      withOneMore?.share.power.nominal,
      withOneMore?.row.key,
      inAll?.power.nominal,
    ]);
    expect(ports).toEqual([
      ['C1', 65, 45, 'C1 + C2', 45],
      ['C2', 30, 15, 'C2 + A1', 15],
      ['A1', 18, 15, 'C2 + A1', 15],
    ]);
  });

  test('every addition of one device with what falls, the largest falls first', () => {
    expect(said(THREE)).toEqual([
      'C1 + C2: C1 65 to 45, 20',
      'C1 + A1: C1 65 to 45, 20',
      'C2 + A1: C2 30 to 15, 15',
      'C2 + C1: C2 30 to 20, 10',
      'C1 + C2 + A1: C2 20 to 15, 5',
      'A1 + C2: A1 18 to 15, 3',
      'C1 + A1 + C2: A1 18 to 15, 3',
      'A1 + C1: A1 18 to 18, 0',
      'C1 + C2 + A1: C1 45 to 45, 0',
      'C1 + A1 + C2: C1 45 to 45, 0',
      'C2 + A1 + C1: C2 15 to 15, 0',
      'C2 + A1 + C1: A1 15 to 15, 0',
    ]);
    expect(answersOf(THREE).additions.unknown).toBe(0);
  });

  test('additions to or from a set that is not known are counted, not guessed', () => {
    const partly = entryWithPorts(
      [outputPort('C1', '65 W'), outputPort('C2', '30 W'), outputPort('A1', '18 W')],
      sharing([allocation({ C1: '45 W', C2: '20 W' })]),
    );
    // Of nine additions (three ports into each of three sets around them) two have both sets: C1 + C2 from either side.
    expect(answersOf(partly).additions).toMatchObject({ unknown: 7 });
    expect(said(partly)).toEqual(['C1 + C2: C1 65 to 45, 20', 'C2 + C1: C2 30 to 20, 10']);
    expect(answersOf(partly).ports.map(({ inAll, unknown }) => [inAll, unknown])).toEqual([
      [null, 2],
      [null, 2],
      [null, 3],
    ]);
  });

  test('whether the others are interrupted is "not tested" unless the author says', () => {
    expect(answersOf(THREE).ports.map(({ port, onNewPlug }) => [port, onNewPlug])).toEqual([
      ['C1', 'keeps'],
      ['C2', 'not tested'],
      ['A1', 'not tested'],
    ]);
  });
});

// Texas Instruments application note SLVAFG6B, "System power management" of two-port controllers.
describe('the scenarios of the two-port note', () => {
  // Section 3.2: 105 W in all, A 60 W, B 45 W. A alone at 27 W; B joins with 45 W, A keeps 27 W; A rises to 60 W, B keeps 45 W.
  test('assured capacity: a port never depends on the other', () => {
    const scenario = entryWithPorts(
      [outputPort('A', '60 W'), outputPort('B', '45 W')],
      sharing([], { policy: 'assured', ...total('105 W') }),
    );
    expect(additionsOf(matrixOf(scenario)).steps.map(({ port, fall }) => [port, fall])).toEqual([
      ['A', 0],
      ['B', 0],
    ]);
    expect(capacitySentence(capacityOf(scenario))).toBe(
      'Assured capacity: every port keeps its limit whatever the others do. The ports’ own limits add up to 105\u00a0W of 105\u00a0W.',
    );
    const asked = entryWithPorts(
      [outputPort('A', '60 W'), outputPort('B', '45 W')],
      sharing([allocation({ A: '27 W' }), allocation({ A: '27 W', B: '45 W' })], total('105 W')),
    );
    expect(said(asked)).toEqual(['A + B: A 27 to 27, 0', 'B + A: B 45 to 45, 0']);
  });

  // Section 5.2: 75 W in all, 60 W each at most: 120 W of limits, 45 W more than the system, which is legal; 37.5 W each together.
  test('shared capacity: limits may add up to more than the total, and both fall to 37.5 W', () => {
    const scenario = entryWithPorts(
      [outputPort('A', '60 W'), outputPort('B', '60 W')],
      sharing([allocation({ A: '37.5 W', B: '37.5 W' })], { policy: 'shared', ...total('75 W') }),
    );
    expect(said(scenario)).toEqual(['A + B: A 60 to 37.5, 22.5', 'B + A: B 60 to 37.5, 22.5']);
    expect(capacitySentence(capacityOf(scenario))).toBe(
      'Shared capacity: the ports draw on one total of 75\u00a0W. The ports’ own limits add up to 120\u00a0W, 45\u00a0W more than that, as they may.',
    );
  });

  // The same: one asks 60 W and the other 15 W; the first plugged keeps what it asked for.
  test('60 W and 15 W by order of plugging', () => {
    const rows = [allocation({ A: '60 W', B: '15 W' }, { order: ['A', 'B'] }), allocation({ A: '15 W', B: '60 W' }, { order: ['B', 'A'] })];
    const scenario = entryWithPorts(
      [outputPort('A', '60 W'), outputPort('B', '60 W')],
      sharing(rows, { policy: 'shared', ...total('75 W') }),
    );
    expect(said(scenario)).toEqual(['A + B: A 60 to 60, 0', 'B + A: B 60 to 60, 0']);
    expect(answersOf(scenario).ports.map(({ withOneMore }) => withOneMore?.share.power.nominal)).toEqual([15, 15]);
    expect(knownOrders(matrixOf(scenario))).toEqual([{ key: 'A + B', known: 2, all: 2 }]);
  });
});

describe('capacity by its name', () => {
  test('limits above the total say by themselves that it is shared', () => {
    const silent = entryWithPorts([outputPort('A', '60 W'), outputPort('B', '60 W')], sharing([], total('75 W')));
    expect(capacityOf(silent)).toMatchObject({ kind: 'shared', isStated: false });
  });

  test('limits within the total leave open which it is', () => {
    const silent = entryWithPorts([outputPort('A', '30 W'), outputPort('B', '30 W')], sharing([], total('75 W')));
    expect(capacityOf(silent)).toMatchObject({ kind: null });
  });
});

describe('what to measure next', () => {
  test('where capacity is assured the ports alone settle every set', () => {
    const assured = entryWithPorts(
      [outputPort('A', '60 W'), outputPort('B', null), outputPort('C', null)],
      sharing([], { policy: 'assured' }),
    );
    expect(setsToMeasureNext(matrixOf(assured)).map(({ key }) => key)).toEqual(['B', 'C']);
  });

  test('an order of plugging between alike ports tells the other order too', () => {
    const ordered = entryWithPorts(
      [outputPort('C1', '65 W'), outputPort('C2', '65 W')],
      sharing([allocation({ C1: '65 W', C2: '30 W' }, { order: ['C1', 'C2'] })], { alike: [['C1', 'C2']] }),
    );
    const rows = matrixOf(ordered).rows.filter(({ key }) => key === 'C1 + C2');
    expect(rows.map(({ order, standing, shares }) => [order, standing, shares.map(({ power }) => power.nominal)])).toEqual([
      [['C1', 'C2'], 'known', [65, 30]],
      [['C2', 'C1'], 'implied', [30, 65]],
    ]);
    expect(matrixOf(ordered).counts).toEqual({ known: 3, implied: 0, missing: 0 });
  });

  test('an order that stands alone is one of two', () => {
    const ordered = entryWithPorts(
      [outputPort('C1', '65 W'), outputPort('C2', '65 W')],
      sharing([allocation({ C1: '65 W', C2: '30 W' }, { order: ['C1', 'C2'] })]),
    );
    expect(knownOrders(matrixOf(ordered))).toEqual([{ key: 'C1 + C2', known: 1, all: 2 }]);
  });
});
