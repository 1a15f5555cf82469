import { describe, expect, test } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import type { EfficiencyFigures, EfficiencyJudgement } from '../../../src/derived/efficiency/efficiency-figures.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';

const ONE_PORT = 'C1: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 9 V 3 A, 20 V 3.25 A] }';

function figures(
  measurements: string,
  { ports = ONE_PORT, input = '100-240 V~ 50/60 Hz 1.5 A', kind = 'wall charger', total = '65 W' } = {},
): EfficiencyFigures {
  const text = `---\ntitle: A charger\ndevice: { maker: Larkmoor, model: LM-S65, kind: ${kind} }\nnameplate: { input: ${input}, total: ${total} }\nports:\n  ${ports}\nmeasurements:\n${measurements}\n---\n`;
  const { entry, reading } = checkText('charger', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  return derive(entry).efficiency;
}

const run = (points: string, about = 'port: C1, line: 230 V, output: 20 V, at: board'): string =>
  `  efficiency:\n    - { ${about}, points: { ${points} } }`;

function printed(known: Known | undefined, factor: number, decimals: number): string {
  if (known === undefined) return 'not there';
  return isMissing(known) ? known.reason : (known.nominal * factor).toFixed(decimals);
}

function judged({ judgements }: EfficiencyFigures, rule: string, of: EfficiencyJudgement['of']): EfficiencyJudgement {
  const found = judgements.filter((judgement) => judgement.rule === rule && judgement.of === of);
  const [only] = found;
  if (only === undefined || found.length > 1) throw new Error(`${String(found.length)} of ${rule}, ${of}`);
  return only;
}

describe('a point near one of the loads', () => {
  test('stands for a tenth within two points, since efficiency is steep there, and for the others within three', () => {
    const tenths = (load: string): number =>
      figures(run(`${load}: 85 %`)).judgements.filter(({ of }) => of === 'a tenth of the load').length;
    expect([tenths('12 %'), tenths('13 %'), tenths('7 %')].map((count) => count > 0)).toEqual([true, false, false]);
    const [run28] = figures(run('28 %: 85 %, 50 %: 90 %, 75 %: 90 %, 100 %: 90 %')).runs;
    expect(printed(run28?.mean, 100, 2)).toBe('88.75');
  });
});

describe('points in whatever form they come', () => {
  test.each([
    ['per cent of full load', '100 %: 20.02 V 3.25 A 70.80 W'],
    ['amperes', '3.25 A: 20.02 V 70.80 W'],
    ['both sides and the ratio', '3.25 A: 20.02 V 70.80 W 91.9 %'],
  ])('%s: output, loss and share are worked out', (_, point) => {
    const [only] = figures(run(point)).runs;
    const [at] = only?.points ?? [];
    expect(at?.share).toBe(1);
    expect(printed(at?.output, 1, 1)).toBe('65.1');
    expect(printed(at?.loss, 1, 1)).toBe('5.7');
    expect(printed(at?.efficiency, 100, 1)).toBe('91.9');
  });

  test('ohms and watts say the share of full load by the voltage that was set', () => {
    const [ohms] = figures(run('12.3 Ω: 45.1 W')).runs;
    expect(ohms?.points[0]?.share?.toFixed(4)).toBe('0.5003');
    const [watts] = figures(run('32.5 W: 35.8 W')).runs;
    expect(watts?.points[0]?.share).toBe(0.5);
    expect(printed(watts?.points[0]?.efficiency, 100, 1)).toBe('90.8');
  });

  test('a port, a voltage, a line or a place of its own makes a run of its own', () => {
    const { runs } = figures(
      '  efficiency:\n' +
        ['line: 230 V, at: board', 'line: 115 V, at: board', 'line: 230 V, at: cable end']
          .map((about) => `    - { port: C1, output: 20 V, ${about}, load: 100 %, efficiency: 91 % }`)
          .join('\n'),
    );
    expect(runs.map(({ line, place }) => [line, place])).toEqual([
      [230, 'board'],
      [115, 'board'],
      [230, 'cable end'],
    ]);
  });
});

describe('the mean over 25, 50, 75 and 100 %', () => {
  const four = '0.8125 A: 89.3 %, 1.625 A: 91.2 %, 2.4375 A: 91.7 %, 3.25 A: 91.9 %';

  test('is the plain mean of the nearest points: 91.025 %', () => {
    expect(printed(figures(run(four)).runs[0]?.mean, 100, 3)).toBe('91.025');
  });

  test('is not known with a point lacking, which is named', () => {
    const mean = figures(run('0.8125 A: 89.3 %, 1.625 A: 91.2 %, 3.25 A: 91.9 %')).runs[0]?.mean;
    expect(mean).toMatchObject({ missing: true, needs: ['efficiency at 75 %'] });
  });

  test('as stated by the author stands for one that was not measured', () => {
    const { runs } = figures('  efficiency:\n    - { port: C1, line: 230 V, output: 20 V, at: board, average: 91.0 % }');
    expect(printed(runs[0]?.mean, 100, 1)).toBe('91.0');
  });
});

describe('meets, misses, undecided', () => {
  const run230 = (mean: string) => figures(`  efficiency:\n    - { port: C1, line: 230 V, output: 20 V, at: board, average: ${mean} }`);

  // 65 W, basic voltage: 88 % by (EU) 2019/1782, Annex II 1(b), table; 89 % by (EU) 2025/2052, Annex II, Table 1.
  test('90.0 % meets 88 % by two points, 86.0 % misses it by two', () => {
    const meets = judged(run230('90.0 %'), 'eu-2019-1782', 'average');
    expect([meets.verdict, meets.margin?.low.toFixed(1)]).toEqual(['meets', '2.0']);
    const misses = judged(run230('86.0 %'), 'eu-2019-1782', 'average');
    expect([misses.verdict, misses.margin?.high.toFixed(1)]).toEqual(['misses', '-2.0']);
  });

  test('an interval across the limit is undecided', () => {
    expect(judged(run230('89.0 % ± 0.5 %'), 'eu-2025-2052', 'average').verdict).toBe('undecided');
    expect(judged(run230('90.0 % ± 0.5 %'), 'eu-2025-2052', 'average').verdict).toBe('meets');
  });

  test('"> 94 %" is certain to meet 88 %; "> 87 %" decides nothing', () => {
    expect(judged(run230('"> 94 %"'), 'eu-2019-1782', 'average').verdict).toBe('meets');
    expect(judged(run230('"> 87 %"'), 'eu-2019-1782', 'average').verdict).toBe('undecided');
  });
});

describe('which rule looks at what', () => {
  const stated = (more: string): string => `  efficiency:\n    - { port: C1, output: 20 V, at: board, average: 91.0 %, ${more} }`;

  test('230 V by the Union, 115 V by the United States, and both by tier 2', () => {
    const rules = (line: string) => figures(stated(`line: ${line}`)).judgements.map(({ rule }) => rule);
    expect(rules('230 V')).toEqual(['eu-2019-1782', 'eu-2025-2052', 'code-of-conduct-tier-2']);
    expect(rules('115 V')).toEqual(['level-vi', 'code-of-conduct-tier-2']);
  });

  test('a supply of a car has none, nor a power bank, and nor has what gives more than 250 W', () => {
    expect(figures(stated('line: 13.8 V'), { input: '12-24 V⎓ 8 A', kind: 'car charger' }).outOfScope).toContain('DC input');
    expect(figures(stated('line: 230 V'), { kind: 'power bank' }).outOfScope).toContain('power bank');
    const ports = 'C1: { connector: barrel, power: 300 W, offers: [20 V 15 A] }';
    const large = figures(stated('line: 230 V'), { ports, total: '300 W' });
    expect([large.judgements, large.outOfScope]).toEqual([[], 'the limits end at 250 W']);
  });

  test('what the device reports of itself is shown and not judged', () => {
    const own = figures(stated('line: 230 V, method: reported by the operating system'));
    expect([own.runs.length, own.judgements]).toEqual([1, []]);
  });

  test('the efficiency of one stage is not that of the device', () => {
    const { runs } = figures('  efficiency:\n    - { of: pfc, line: 230 V, load: 100 %, efficiency: 98.6 %, at: board }');
    expect(runs).toEqual([]);
  });

  test('one port of several decides nothing, as the test loads them all at once', () => {
    const ports = `${ONE_PORT}\n  C2: { connector: USB-C, power: 30 W, offers: [5 V 3 A, 9 V 3 A] }`;
    const judgement = judged(figures(stated('line: 230 V'), { ports }), 'eu-2019-1782', 'average');
    expect([judgement.outputClass, judgement.verdict]).toEqual(['multiple voltage', 'undecided']);
    expect(judgement.remark).toContain('C1 alone');
  });
});

describe('a USB PD supply at its lowest voltage', () => {
  // 10 CFR 430 Subpart B, Appendix Z: 2, 1.5, 1 and 0.5 A in place of the loads of the nameplate.
  test('is tested with 2, 1.5, 1 and 0.5 A', () => {
    const low = figures(
      run('0.5 A: 80.0 %, 1 A: 82.0 %, 1.5 A: 83.0 %, 2 A: 83.4 %, 3 A: 82.0 %', 'port: C1, line: 115 V, output: 5 V, at: board'),
    );
    const judgement = judged(low, 'level-vi', 'average');
    // (80 + 82 + 83 + 83.4) / 4, against 0.0834 ln 10 − 0.0014 × 10 + 0.609 = 78.70 %.
    expect([printed(judgement.measured, 100, 1), (judgement.limit * 100).toFixed(2), judgement.verdict]).toEqual([
      '82.1',
      '78.70',
      'meets',
    ]);
    expect(judgement.remark).toContain('2, 1.5, 1, 0.5 A');
  });

  test('is not looked at between its lowest and highest voltage by that rule', () => {
    const middle = figures('  efficiency:\n    - { port: C1, line: 115 V, output: 9 V, at: board, average: 88.0 % }');
    expect(middle.judgements.map(({ rule }) => rule)).toEqual(['code-of-conduct-tier-2']);
  });
});

describe('a tenth of the load', () => {
  test('at 5 V counts 3 A and 15 W, where the mean counts 2 A and 10 W', () => {
    const points = '0.3 A: 4.99 V 1.95 W 76.8 %, 0.5 A: 80.0 %, 1 A: 82.0 %, 1.5 A: 83.0 %, 2 A: 83.4 %, 3 A: 82.0 %';
    const low = figures(run(points, 'port: C1, line: 230 V, output: 5 V, at: board'));
    // (EU) 2025/2052, Table 5, notes 2 and 3, Annex II 1(i): 0.0834 ln 15 − 0.0011 × 15 + 0.509 = 71.84 %.
    const tenth = judged(low, 'eu-2025-2052', 'a tenth of the load');
    expect([tenth.watts, (tenth.limit * 100).toFixed(2), tenth.verdict]).toEqual([15, '71.84', 'meets']);
    expect(judged(low, 'eu-2025-2052', 'average').watts).toBe(10);
  });

  test('a supply of 28 V is no USB PD supply in the sense of the rule of the United States', () => {
    const ports = 'C1: { connector: USB-C, power: 140 W, offers: [5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, 28 V 5 A] }';
    const low = figures('  efficiency:\n    - { port: C1, line: 115 V, output: 5 V, at: board, average: 85.0 % }', {
      ports,
      total: '140 W',
    });
    expect(judged(low, 'level-vi', 'average').watts).toBe(15);
  });
});

describe('the cable that a rule takes off', () => {
  // (EU) 2025/2052, Annex IV, point 3: 0.13 Ω up to 3 A, 0.10 Ω above, for a measurement at the receptacle.
  const points = '0.8125 A: 20.09 V 18.28 W, 1.625 A: 20.07 V 35.76 W, 2.4375 A: 20.05 V 53.30 W, 3.25 A: 20.02 V 70.80 W';
  const at = (place: string) =>
    judged(figures(run(points, `port: C1, line: 230 V, output: 20 V, at: ${place}`)), 'eu-2025-2052', 'average');

  test('costs about 1 point at 3.25 A and 20 V, on average over the loads', () => {
    const [board, connector] = [at('board'), at('connector')];
    // Off come I² × 0.1 Ω: 0.066, 0.264, 0.594 and 1.056 W of 18.28, 35.76, 53.30 and 70.80 W, on average 0.926 points.
    const lost = (board.margin?.low ?? 0) - (connector.margin?.low ?? 0);
    expect(lost.toFixed(2)).toBe('0.93');
    expect(connector.remark).toContain('0.100 ohm of cable');
  });
});

describe('power without load', () => {
  test('63 mW come to 0.55 kWh in a year', () => {
    const { noLoad } = figures('  standby: { 230 V: 63 mW }');
    expect(printed(noLoad[0]?.yearly, 1 / 3.6e6, 2)).toBe('0.55');
  });

  test('against 100 mW of 65 W is decided by its class, with a margin in watts', () => {
    const { judgements } = figures('  standby: { 230 V: 63 mW }');
    // (EU) 2019/1782, Annex II 1(a): 0.21 W above 49 W. (EU) 2025/2052, Table 4: an adaptive supply counts with 2 A at 5 V, so 0.075 W.
    expect(judgements.map(({ rule, limit, verdict }) => [rule, limit, verdict])).toEqual([
      ['eu-2019-1782', 0.21, 'meets'],
      ['eu-2025-2052', 0.075, 'meets'],
      ['code-of-conduct-tier-2', 0.15, 'meets'],
    ]);
    expect(((judgements[0]?.margin?.low ?? 0) * 1e3).toFixed(0)).toBe('147');
  });

  test('"< 75 mW" meets 210 mW and leaves no doubt; "< 300 mW" decides nothing', () => {
    const verdict = (value: string) => judged(figures(`  standby: { 230 V: "${value}" }`), 'eu-2019-1782', 'no load').verdict;
    expect(verdict('< 75 mW')).toBe('meets');
    expect(verdict('< 300 mW')).toBe('undecided');
  });

  // (EU) 2025/2052, Annex II 1(h) and Table 1, note 1, worked: 0.075 W of one port, 0.100 of two, 0.150 of four, 0.250 of five, 0.300 at most.
  test.each([
    [1, 10, '0.075'],
    [2, 20, '0.100'],
    [4, 40, '0.150'],
    [5, 50, '0.250'],
    [8, 80, '0.300'],
  ])('%d adaptive ports count with %d W and may take %s W', (count, watts, limit) => {
    const ports = Array.from({ length: count }, (_, index) => ONE_PORT.replace('C1', `C${String(index + 1)}`)).join('\n  ');
    const held = judged(figures('  standby: { 230 V: 63 mW }', { ports, total: '200 W' }), 'eu-2025-2052', 'no load');
    expect([held.watts, held.limit.toFixed(3)]).toEqual([watts, limit]);
  });
});

describe('a device with one output', () => {
  test('needs not name it', () => {
    const { runs } = figures('  efficiency:\n    - { line: 230 V, output: 20 V, at: board, load: 100 %, efficiency: 91 % }');
    expect([runs[0]?.port, runs[0]?.fullAmps]).toEqual(['C1', 3.25]);
  });
});
