import { describe, expect, test } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import type { EfficiencyFigures, EfficiencyJudgement } from '../../../src/derived/efficiency/efficiency-figures.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';

const TWO = ['C1: { connector: USB-C, power: 60 W, offers: [5 V 3 A, 9 V 3 A, 20 V 3 A] }', 'C2: { same as: C1 }'];

function figures(measurements: string, { ports = TWO, total = '75 W', input = '100-240 V~ 50/60 Hz 1.5 A' } = {}): EfficiencyFigures {
  const text = `---\ntitle: A charger\ndevice: { maker: Larkmoor, model: LM-S75, kind: wall charger }\nnameplate: { input: ${input}, total: ${total} }\nports:\n${ports.map((port) => `  ${port}\n`).join('')}measurements:\n  efficiency:\n${measurements}\n---\n`;
  const { entry, reading } = checkText('charger', text);
  if (entry === null || reading.some(({ severity }) => severity === 'error')) throw new Error(JSON.stringify(reading));
  return derive(entry).efficiency;
}

function judged({ judgements }: EfficiencyFigures, rule: string, of: EfficiencyJudgement['of'] = 'average'): EfficiencyJudgement {
  const found = judgements.filter((judgement) => judgement.rule === rule && judgement.of === of);
  const [only] = found;
  if (only === undefined || found.length > 1) throw new Error(`${String(found.length)} of ${rule}, ${of}`);
  return only;
}

const percent = (known: Known | undefined, decimals: number): string =>
  known === undefined || isMissing(known) ? 'missing' : (known.nominal * 100).toFixed(decimals);

/** Loads in per cent of full load at 20 V, with the input power that makes the efficiency. */
const shared = (points: string, about = 'port: C1 + C2, line: 115 V, output: 20 V, at: board'): string =>
  `    - { ${about}, points: { ${points} } }`;

describe('several ports at once', () => {
  // 75 W in all, two ports of 60 W: D = 75 / 120 = 0.625, so full load is 1.875 A a port (10 CFR 430, Appendix Z, 5(b)(1)(iv)).
  const FULL = '1.875 A + 1.875 A: "20 V + 20 V, 83.333 W"';

  test('are loaded with what each is rated for, made smaller by 0.625 alike', () => {
    const [run] = figures(shared(FULL)).runs;
    expect(run?.full?.derating.nominal).toBe(0.625);
    expect(run?.full?.amps).toEqual([1.875, 1.875]);
  });

  test('give the sum of their powers: 75.0 W of 83.3 W are 90.0 %', () => {
    const [run] = figures(shared(FULL)).runs;
    const [point] = run?.points ?? [];
    expect(isMissing(point?.output ?? { missing: true, reason: '', needs: [] })).toBe(false);
    expect([point?.share, percent(point?.efficiency, 1)]).toEqual([1, '90.0']);
    expect(point?.spread).toEqual([1, 1]);
  });

  test('are not made smaller where together they stay below the total', () => {
    const [run] = figures(shared('3 A + 3 A: "20 V + 20 V, 133 W"'), { total: '130 W' }).runs;
    expect(run?.full?.amps).toEqual([3, 3]);
    expect(run?.points[0]?.share).toBe(1);
  });

  test('at voltages of their own are a run of their own', () => {
    const { runs } = figures(
      [
        shared('50 %: 90 %', 'port: C1 + C2, line: 115 V, output: 20 V + 9 V, at: board'),
        shared('50 %: 90 %', 'port: C1 + C2, line: 115 V, output: 20 V, at: board'),
      ].join('\n'),
    );
    expect(runs.map(({ settings }) => settings)).toEqual(['20 V + 9 V', '20 V']);
    // 60 W and 27 W are 87 W, above 75 W: 0.8621.
    expect(runs[0]?.full?.derating.nominal.toFixed(4)).toBe('0.8621');
  });
});

describe('the mean of several ports beside the limits', () => {
  const at = (share: number, efficiency: number): string => {
    const amps = (1.875 * share).toFixed(5);
    return `${amps} A + ${amps} A: "20 V + 20 V, ${((2 * 20 * Number(amps)) / efficiency).toFixed(4)} W"`;
  };
  const run = (efficiency: number, about?: string): string =>
    shared([1, 0.75, 0.5, 0.25].map((share) => at(share, efficiency)).join(', '), about);

  // Multiple voltage, 75 W: 86.0 % (10 CFR 430.32(w), as quoted; (EU) 2019/1782, Annex II 1(b)), 88 % by (EU) 2025/2052, Annex II, Table 4.
  test('meets 86.0 % with 87.5 % by 1.5 points, and misses it with 85.0 % by one', () => {
    const meets = judged(figures(run(0.875)), 'level-vi');
    expect([meets.outputClass, meets.verdict, meets.margin?.low.toFixed(1)]).toEqual(['multiple voltage', 'meets', '1.5']);
    const misses = judged(figures(run(0.85)), 'level-vi');
    expect([misses.verdict, misses.margin?.high.toFixed(1)]).toEqual(['misses', '-1.0']);
    expect(misses.remark).toContain('full load 1.88 A + 1.88 A, derated by 0.625');
  });

  test('is held against 88 % by the rule that follows', () => {
    const europe = figures(run(0.875, 'port: C1 + C2, line: 230 V, output: 20 V, at: board'));
    expect([judged(europe, 'eu-2019-1782').verdict, judged(europe, 'eu-2025-2052').verdict]).toEqual(['meets', 'misses']);
    expect(judged(europe, 'eu-2019-1782').remark).toContain('common practice');
  });

  test('decides nothing where the load was spread otherwise', () => {
    const uneven = [1, 0.75, 0.5, 0.25]
      .map((share) => `${(3 * share).toFixed(4)} A + ${(0.75 * share).toFixed(4)} A: "20 V + 20 V, ${((75 * share) / 0.9).toFixed(4)} W"`)
      .join(', ');
    const judgement = judged(figures(shared(uneven)), 'level-vi');
    expect(judgement.verdict).toBe('undecided');
    expect(judgement.remark).toContain('at 25 % of the load the ports carried C1 40 %, C2 10 % of theirs');
  });

  test('decides nothing where watts of all together are all that is said', () => {
    const judgement = judged(figures(shared('75 W: 83.3 W, 56.25 W: 62.5 W, 37.5 W: 41.7 W, 18.75 W: 20.9 W')), 'level-vi');
    expect([judgement.verdict, judgement.remark?.includes('how the load was spread over the ports is not said')]).toEqual([
      'undecided',
      true,
    ]);
  });

  test('decides nothing while an output has no load', () => {
    const three = [...TWO, 'A1: { connector: USB-A, power: 12 W, offers: [5 V 2.4 A] }'];
    const judgement = judged(figures(run(0.875), { ports: three }), 'level-vi');
    expect([judgement.verdict, judgement.remark?.startsWith('measured without A1')]).toEqual(['undecided', true]);
  });

  test('is undecided where the rating of a port at its voltage is not known', () => {
    const ports = [TWO[0] ?? '', 'C2: { connector: USB-C, power: 60 W }'];
    const stated = figures(
      shared('50 %: 90 %', 'port: C1 + C2, line: 230 V, output: 20 V, at: board').replace('points: { 50 %: 90 % }', 'average: 90 %'),
      { ports },
    );
    expect(judged(stated, 'eu-2019-1782').remark).toContain('what C2 at 20 V is rated for is not known');
  });

  test('per cent are those of the derated loads of each port', () => {
    const stated = figures(shared('100 %: 87.5 %, 75 %: 87.5 %, 50 %: 87.5 %, 25 %: 87.5 %'));
    expect([judged(stated, 'level-vi').verdict, stated.runs[0]?.points[0]?.spread]).toEqual(['meets', [1, 1]]);
  });
});

describe('a load that the supply did not hold', () => {
  // Appendix Z, 6(b)(1)(vi)(B): the mean is that of the loads for which it can sustain output.
  const held = (line: string, full: string): string => {
    const at = (share: number, efficiency: number): string =>
      `${String(share * 100)} %: "${[0, 1].map(() => `20 V ${(1.875 * share).toFixed(5)} A`).join(' + ')}, ${((75 * share) / efficiency).toFixed(4)} W"`;
    return shared([full, at(0.75, 0.9), at(0.5, 0.88), at(0.25, 0.86)].join(', '), `port: C1 + C2, line: ${line}, output: 20 V, at: board`);
  };

  test('is left out of the mean by the test of the United States: (90 + 88 + 86) / 3 = 88.0 %, two points above 86 %', () => {
    const judgement = judged(figures(held('115 V', '100 %: not sustained')), 'level-vi');
    expect([percent(judgement.measured, 1), judgement.verdict, judgement.margin?.low.toFixed(1)]).toEqual(['88.0', 'meets', '2.0']);
    expect(judgement.remark).toContain('100 % of the load not sustained, and left out of the mean');
  });

  test('leaves the mean undecided where the rule was not read to say so', () => {
    const europe = figures(held('230 V', '100 %: not sustained'));
    for (const rule of ['eu-2019-1782', 'eu-2025-2052', 'code-of-conduct-tier-2'])
      for (const judgement of europe.judgements.filter((each) => each.rule === rule && each.of === 'average'))
        expect([judgement.verdict, judgement.remark?.startsWith('100 % of the load not sustained')]).toEqual(['undecided', true]);
    expect(judged(europe, 'eu-2025-2052').margin).toBeNull();
  });

  test('is not a load that nobody tried: then there is no mean', () => {
    const judgement = judged(figures(held('115 V', '10 %: not sustained')), 'level-vi');
    expect([judgement.verdict, isMissing(judgement.measured) && judgement.measured.reason]).toEqual([
      'undecided',
      'no point near 100 % of the load',
    ]);
    const none = judged(figures(shared('100 %: not sustained, 75 %: 90 %')), 'level-vi');
    expect(none.verdict).toBe('undecided');
  });

  test('at a tenth of the load withholds that verdict with its reason', () => {
    const judgement = judged(figures(held('230 V', '10 %: not sustained')), 'eu-2025-2052', 'a tenth of the load');
    expect([judgement.verdict, judgement.remark]).toEqual(['undecided', '10 % of the load not sustained']);
  });

  test('of one port counts alike', () => {
    const one = figures(
      '    - { port: C1, line: 115 V, output: 20 V, at: board, points: { 25 %: 86 %, 50 %: 88 %, 75 %: 90 %, 100 %: not sustained } }',
      {
        ports: ['C1: { connector: USB-C, power: 60 W, offers: [5 V 3 A, 20 V 3 A] }'],
        total: '60 W',
      },
    );
    expect(percent(judged(one, 'level-vi').measured, 1)).toBe('88.0');
    const [run] = one.runs;
    expect(run !== undefined && isMissing(run.mean) && run.mean.reason).toBe('100 % of the load not sustained');
  });
});

describe('the lowest voltage of several ports', () => {
  const low = (points: string, line = '115 V', more = ''): string =>
    shared(points, `port: C1 + C2${more}, line: ${line}, output: 5 V, at: board`);

  // Appendix Z, 6(b)(1)(iii)(B): 2, 1.5, 1 and 0.5 A a port; 20 W of nameplate: 0.075 ln 20 + 0.561 = 78.57 %; (EU) 2025/2052: 84.77 %.
  test('is tested with 2, 1.5, 1 and 0.5 A at each, and counts with 10 W a port', () => {
    const points = [2, 1.5, 1, 0.5].map(
      (amps) => `${String(amps)} A + ${String(amps)} A: "5 V + 5 V, ${((10 * amps) / 0.8).toFixed(3)} W"`,
    );
    const america = judged(figures(low(points.join(', '))), 'level-vi');
    expect([america.watts, (america.limit * 100).toFixed(2), america.verdict]).toEqual([20, '78.57', 'meets']);
    const europe = judged(figures(low(points.join(', '), '230 V')), 'eu-2025-2052');
    expect([europe.watts, (europe.limit * 100).toFixed(2), europe.verdict]).toEqual([20, '84.77', 'misses']);
  });

  test('with four ports of 5 V 2 A counts with 40 W: 87.57 %', () => {
    const four = [...TWO, 'C3: { same as: C1 }', 'C4: { same as: C1 }'];
    const points = [2, 1.5, 1, 0.5]
      .map(
        (amps) =>
          `${Array(4)
            .fill(`${String(amps)} A`)
            .join(' + ')}: 90 %`,
      )
      .join(', ');
    const europe = judged(figures(low(points, '230 V', ' + C3 + C4'), { ports: four, total: '100 W' }), 'eu-2025-2052');
    expect([europe.watts, (europe.limit * 100).toFixed(2), europe.verdict]).toEqual([40, '87.57', 'meets']);
  });

  // Appendix Z, 6(b)(1)(iv): at the lowest voltage each port counts with no more than 10 W in the derating factor, one without USB PD too.
  test('counts a port of 5 V 3 A with 10 W in the factor: 45 W for 10 + 3 × 10 W are no reason to derate, where 10 + 3 × 15 W would be', () => {
    const ports = [TWO[0] ?? '', 'A1: { connector: USB-A, power: 15 W, offers: [5 V 3 A] }', 'A2: { same as: A1 }', 'A3: { same as: A1 }'];
    const points = [1, 0.75, 0.5, 0.25]
      .map((share) => `${[2, 3, 3, 3].map((amps) => `${String(amps * share)} A`).join(' + ')}: 90 %`)
      .join(', ');
    const four = figures(low(points, '115 V', '').replace('port: C1 + C2', 'port: C1 + A1 + A2 + A3'), { ports, total: '45 W' });
    const judgement = judged(four, 'level-vi');
    expect([judgement.verdict, judgement.remark]).toEqual(['meets', expect.stringContaining('full load 2 A + 3 A + 3 A + 3 A')]);
    expect(judgement.remark).not.toContain('derated');
  });

  test('beside a port without USB PD leaves open what the rule of the United States counts', () => {
    const three = [...TWO, 'A1: { connector: USB-A, power: 15 W, offers: [5 V 3 A] }'];
    const points = (efficiency: number): string =>
      [1, 0.75, 0.5, 0.25]
        .map((share) => `${String(2 * share)} A + ${String(2 * share)} A + ${String(3 * share)} A: ${(efficiency * 100).toFixed(1)} %`)
        .join(', ');
    const at = (efficiency: number): EfficiencyJudgement =>
      judged(figures(low(points(efficiency), '115 V', ' + A1'), { ports: three }), 'level-vi');
    // 20 W of USB PD alone: 78.57 %; 35 W of all: 0.075 ln 35 + 0.561 = 82.77 %.
    expect([at(0.84).verdict, at(0.8).verdict, at(0.78).verdict]).toEqual(['meets', 'undecided', 'misses']);
    expect(at(0.8).remark).toContain('leaves open whether its nameplate power is 20 W or 35 W');
  });
});

describe('a supply with several outputs of one voltage', () => {
  // Appendix Z, 5(a)(1)(iv): a single-voltage supply with several busses; 5 V 4.8 A is of low voltage: 0.0834 ln 24 − 0.0014 × 24 + 0.609 = 84.0 %.
  test('is a single-voltage supply, in the class of low voltage', () => {
    const ports = ['A1: { connector: USB-A, power: 12 W, offers: [5 V 2.4 A] }', 'A2: { same as: A1 }'];
    const judgement = judged(
      figures(shared('100 %: 85 %, 75 %: 85 %, 50 %: 85 %, 25 %: 85 %', 'port: A1 + A2, line: 115 V, output: 5 V, at: board'), {
        ports,
        total: '24 W',
      }),
      'level-vi',
    );
    expect([judgement.outputClass, (judgement.limit * 100).toFixed(1), judgement.verdict]).toEqual(['low voltage', '84.0', 'meets']);
  });
});

describe('the cable of several ports', () => {
  // (EU) 2025/2052, Annex IV, 3(a) and 3(b): 0.130 ohm for a USB-C port of up to 3 A, a metre of 0.519 mm² for the others: 0.066 ohm.
  test('is taken off port by port: 2 A + 2 A lose 0.52 W + 0.27 W of 40 W + 18 W', () => {
    const ports = [TWO[0] ?? '', 'A1: { connector: USB-A, power: 18 W, offers: [5 V 3 A, 9 V 2 A] }'];
    const points = [1, 0.75, 0.5, 0.25].map((share) => {
      const amps = [3 * share, 2 * share];
      return `${amps.map((each) => `${String(each)} A`).join(' + ')}: "20 V + 9 V, ${String((78 * share) / 0.9)} W"`;
    });
    const about = (place: string): string => `port: C1 + A1, line: 230 V, output: 20 V + 9 V, at: ${place}`;
    const at = (place: string): EfficiencyJudgement =>
      judged(figures(shared(points.join(', '), about(place)), { ports, total: '78 W' }), 'eu-2025-2052');
    // Full load: 9 × 0.13 + 4 × 0.0664 = 1.4357 W of 86.667 W, 1.657 points; the mean over the loads has 62.5 % of that.
    const lost = (at('board').margin?.low ?? 0) - (at('connector').margin?.low ?? 0);
    expect(lost.toFixed(2)).toBe('1.04');
    expect(at('connector').remark).toContain('0.130 + 0.066 ohm of cable taken off');
  });
});
