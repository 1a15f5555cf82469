import type { Finding } from '../diagnostics/finding.ts';
import { outputPorts, totalPower } from '../sharing/set-rows.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { isAbove } from './pool-that-fits.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'assured-sum-above-total',
  title: 'Assured maxima add up to more than the total',
  severity: 'error',
  why: 'Assured means that every port keeps its maximum whatever the others do, so the maxima add up to the total at most.',
  advice: 'Write `policy: shared`, or correct the total or a port.',
  source: {
    title: 'Texas Instruments SLVAFG6B (2024), system power management of two-port controllers',
    section: '3.2, assured capacity: 60 W + 45 W = 105 W',
    standing: 'read',
  },
};

export const assuredSumAboveTotal: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  const total = totalPower(entry);
  if (entry.sharing?.policy !== 'assured' || total === null) return [];
  const limits = outputPorts(entry).flatMap((port) => port.power?.quantity.nominal ?? []);
  const sum = limits.reduce((sofar, watts) => sofar + watts, 0);
  if (!isAbove(sum, total.high)) return [];
  const message = `The ports' maxima add up to ${rounded(sum)} W (${limits.map((watts) => rounded(watts)).join(' + ')} W), the total is ${rounded(total.nominal)} W, and the policy is assured.`;
  return [findingOf(RULE, atValue(...entry.sharing.path, 'policy'), { message, subject: 'policy' })];
}
