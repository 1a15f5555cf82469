import { describe, expect, test } from 'vitest';
import { codeOfConductTier2 } from '../../src/standards/efficiency/code-of-conduct-tier-2.ts';
import {
  limitAt,
  noLoadLimitAt,
  outputClass,
  type EfficiencyLine,
  type OutputClass,
} from '../../src/standards/efficiency/efficiency-rule.ts';
import { eu2019 } from '../../src/standards/efficiency/eu-2019-1782.ts';
import { eu2025 } from '../../src/standards/efficiency/eu-2025-2052.ts';
import { EFFICIENCY_RULES } from '../../src/standards/efficiency/index.ts';
import { levelVi } from '../../src/standards/efficiency/level-vi.ts';

/** A limit in per cent, as printed with two decimals. */
function percent(line: EfficiencyLine | null, watts: number): string {
  const limit = line === null ? null : limitAt(line, watts);
  return limit === null ? 'none' : (limit * 100).toFixed(2);
}

describe('limits of the average efficiency', () => {
  // Printed by a maker's data sheet that names Level VI (copy in a public repository, NebraLtd/Helium-Guides).
  test.each([
    [5, 3, '81.39'],
    [9, 2, '85.00'],
    [12, 1.5, '85.00'],
  ])('Level VI of %d V %d A is as a data sheet prints it', (volts, amps, printed) => {
    expect(percent(levelVi.average[outputClass(volts, amps)], volts * amps)).toBe(printed);
  });

  // DER-937 (Power Integrations, 2021-10-18) prints averages with their margins; the limit is their difference, within a digit of the last place.
  test.each([
    [5, 5, 92.1, 7.11],
    [5, 5, 91.47, 6.48],
    [9, 5, 92.6, 3.75],
    [9, 5, 92.77, 3.91],
    [12, 5, 92.64, 3.64],
    [12, 5, 93.17, 4.17],
    [15, 5, 91.87, 2.87],
    [20, 5, 91.32, 2.32],
  ])('tier 2 of %d V %d A gives the margin printed beside %d %%', (volts, amps, average, margin) => {
    const limit = limitAt(
      codeOfConductTier2.average[outputClass(volts, amps)] ?? levelVi.average['basic voltage'] ?? never(),
      volts * amps,
    );
    expect(Math.abs(average - (limit ?? 0) * 100 - margin)).toBeLessThanOrEqual(0.011);
  });

  test('one printed margin of that report does not fit its own average', () => {
    const limit = limitAt(codeOfConductTier2.average['basic voltage'] ?? never(), 100);
    expect((91.3 - (limit ?? 0) * 100).toFixed(2)).toBe('2.30');
  });

  test('rise by a step just above 49 W, and the power without load doubles', () => {
    expect([percent(eu2019.average['basic voltage'], 49), percent(eu2019.average['basic voltage'], 49.01)]).toEqual(['87.77', '88.00']);
    const line = eu2019.noLoad['basic voltage'] ?? never();
    expect([noLoadLimitAt(line, 49), noLoadLimitAt(line, 49.01)]).toEqual([0.1, 0.21]);
  });

  test('meet at 49 W where the regulation means them to, within a tenth of a point', () => {
    const continuous = [eu2025.average, eu2025.atTenth?.lines, codeOfConductTier2.average, codeOfConductTier2.atTenth?.lines];
    for (const lines of continuous) {
      for (const line of Object.values(lines ?? {})) {
        if (line === null) continue;
        expect(Math.abs((limitAt(line, 49) ?? 0) - line.large)).toBeLessThan(0.001);
      }
    }
  });

  test('never fall as the power rises', () => {
    for (const { average } of EFFICIENCY_RULES) {
      for (const line of Object.values(average)) {
        if (line === null) continue;
        const limits = Array.from({ length: 240 }, (_, index) => limitAt(line, 1.5 + index) ?? 0);
        expect(limits).toEqual([...limits].sort((one, other) => one - other));
      }
    }
  });

  test('a rule that is quoted or remembered says so of each line', () => {
    const standings = (lines: Readonly<Record<OutputClass, { readonly standing: string } | null>> | undefined) =>
      Object.values(lines ?? {}).flatMap((line) => (line === null ? [] : [line.standing]));
    expect(new Set(standings(levelVi.average))).toEqual(new Set(['secondary']));
    expect(new Set(standings(eu2025.average))).toEqual(new Set(['read']));
    expect(standings(codeOfConductTier2.atTenth?.lines)).toContain('memory');
  });
});

describe('the class of an output', () => {
  test('low voltage is below 6 V and at least 550 mA', () => {
    expect([outputClass(5, 0.55), outputClass(5, 0.54), outputClass(6, 3)]).toEqual(['low voltage', 'basic voltage', 'basic voltage']);
  });
});

function never(): never {
  throw new Error('the rule has no such line');
}
