import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint, Fact } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'efficiency-row-agrees',
  title: 'Volts, amperes, watts and efficiency of a row do not agree',
  severity: 'warning',
  why: 'Efficiency is volts times amperes over input watts; where a row gives all four, one that does not fit was misread, or belongs to another row.',
  advice: 'Read the row again. What was measured on both sides is used; the efficiency as written is not.',
  source: {
    title: 'Texas Instruments, TIDA-01622 design guide (TIDUDW2)',
    section:
      'tables 4 to 7: every printed row is its volts times its amperes over its watts, to 0.005 points; the slack of 0.1 points is common practice',
    standing: 'read',
  },
};

export const efficiencyRowAgrees: Check = { ...RULE, check };

/** What instruments that do not read at one moment may differ by, as a fraction. */
const SLACK = 0.001;

function check({ entry }: CheckInput): Finding[] {
  return entry.efficiency.flatMap((point) => {
    const { efficiency } = point;
    const worked = workedOut(point);
    if (efficiency === null || worked === null || efficiency.quantity.bound !== 'value') return [];
    const stated = efficiency.quantity;
    if (Math.abs(worked.ratio - stated.nominal) <= stated.resolution / 2 + worked.rounding + SLACK) return [];
    const message = `${worked.words} is ${rounded(worked.ratio * 100)} %, and ${stated.written} is written.`;
    return [findingOf(RULE, atValue(...efficiency.path), { message, subject: 'efficiency' })];
  });
}

/** Efficiency from both sides, and what half of the last digit of each reading may move it by. */
function workedOut(point: EfficiencyPoint): { readonly ratio: number; readonly rounding: number; readonly words: string } | null {
  const { input } = point;
  const powers = powersOf(point);
  if (powers === null || input === null || input.quantity.nominal <= 0) return null;
  const output = powers.reduce((sum, { watts }) => sum + watts, 0);
  const doubt = powers.reduce((sum, { watts, share }) => sum + watts * share, 0);
  const ratio = output / input.quantity.nominal;
  const rounding = doubt / input.quantity.nominal + ratio * halfDigit(input);
  return { ratio, rounding, words: `${powers.map(({ words }) => words).join(' + ')} over ${input.quantity.written}` };
}

/** Output power of each port with what half of the last digits may move it by, as a share; null where one is not measured. */
function powersOf(point: EfficiencyPoint): readonly { readonly watts: number; readonly share: number; readonly words: string }[] | null {
  const loads = point.loads.length === 0 ? [{ ...point, power: null }] : point.loads;
  const powers = loads.map(({ power, measuredOutput, current }) => {
    if (power !== null) return { watts: power.quantity.nominal, share: halfDigit(power), words: power.quantity.written };
    if (measuredOutput === null || current === null) return null;
    const watts = measuredOutput.quantity.nominal * current.quantity.nominal;
    return {
      watts,
      share: halfDigit(measuredOutput) + halfDigit(current),
      words: `${measuredOutput.quantity.written} × ${current.quantity.written}`,
    };
  });
  return powers.every((power) => power !== null) ? powers : null;
}

/** Half of the last digit, as a share of the reading. */
function halfDigit({ quantity: { nominal, resolution } }: Fact): number {
  return nominal === 0 ? 0 : resolution / 2 / Math.abs(nominal);
}
