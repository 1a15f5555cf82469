import type { Finding } from '../diagnostics/finding.ts';
import type { Claim } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { CM3_PER_IN3 } from '../units/cubic-inch.ts';

const RULE: Rule = {
  id: 'claimed-density-plausible',
  title: 'A stated power density cannot be right',
  severity: 'error',
  why: 'W/cm³ and W/in³ differ by 16.4 and are mixed up in print; a case can only lower the density of its board.',
  advice: 'Compare with the document: unit, and cased or board.',
  source: {
    title: 'EE Power, Power ICs Enable 140 W PD3.1 Adapter Designs (4 June 2023), and Silanna RD-29, doc 11100 v1.0',
    section: '1.4 W/cm³ and 29.8 W/in³; the limit of 5 W/cm³ is common practice',
    standing: 'read',
  },
};

export const claimedDensityPlausible: Check = { ...RULE, check };

const MOST = 5e6;

function check({ entry }: CheckInput): Finding[] {
  const densities = entry.claims.filter((claim) => claim.quantity?.dimension === 'power density');
  return [...densities.flatMap(tooDense), ...swapped(densities)];
}

function tooDense(claim: Claim): Finding[] {
  const density = claim.quantity?.nominal ?? 0;
  if (density <= MOST) return [];
  const hint = density / CM3_PER_IN3 <= MOST ? ` Did you mean ${rounded(density / 1e6)} W/in³?` : '';
  const message = `${claim.of}: ${claim.written} is ${rounded(density / 1e6)} W/cm³, above what adapters reach.${hint}`;
  return [findingOf(RULE, atValue(...claim.path, 'value'), { message, subject: claim.of })];
}

function swapped(densities: readonly Claim[]): Finding[] {
  const board = densities.find((claim) => claim.basis === 'board');
  const cased = densities.find((claim) => claim.basis === 'cased');
  if (board?.quantity == null || cased?.quantity == null || cased.quantity.nominal <= board.quantity.nominal) return [];
  const message = `${cased.written} cased is more than ${board.written} of the board: they may have changed places.`;
  return [findingOf(RULE, atValue(...cased.path, 'value'), { message, severity: 'warning', subject: cased.of })];
}
