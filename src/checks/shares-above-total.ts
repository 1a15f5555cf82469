import type { Finding } from '../diagnostics/finding.ts';
import { totalPower } from '../sharing/set-rows.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { isAbove, poolThatFits } from './pool-that-fits.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'shares-above-total',
  title: 'The shares of one set add up to more than the total',
  severity: 'error',
  why: 'Ports in use together cannot give more than the device can; the ports alone may well add up to more.',
  advice: 'Compare the shares and the total with the print.',
  source: {
    title: 'Texas Instruments SLVAFG6B (2024), system power management of two-port controllers',
    section: '5.2, shared capacity: every pair of shares adds up to at most the system power',
    standing: 'read',
  },
};

export const sharesAboveTotal: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  const total = totalPower(entry);
  if (total === null) return [];
  return (derived.shares?.rows ?? []).flatMap((row) => {
    if (row.standing !== 'known' || row.sum === null || row.path === null) return [];
    if (!isAbove(row.sum.low, total.high) || poolThatFits(row, total.high) !== null) return [];
    const measured = row.shares.some((share) => share.power.origin.evidence === 'measured');
    const parts = row.shares.length > 1 ? ` (${row.shares.map((share) => rounded(share.power.nominal)).join(' + ')} W)` : '';
    const message = `${row.key} adds up to ${rounded(row.sum.nominal)} W${parts}, above the total of ${rounded(total.nominal)} W.`;
    return [findingOf(RULE, atValue(...row.path), { message, severity: measured ? 'warning' : 'error', subject: row.key })];
  });
}
