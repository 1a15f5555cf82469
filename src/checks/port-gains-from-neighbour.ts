import type { Finding } from '../diagnostics/finding.ts';
import type { PortShare, SetRow } from '../sharing/share-matrix.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'port-gains-from-neighbour',
  title: 'A port gets more because another one was plugged in',
  severity: 'warning',
  why: 'A second device takes power away and never adds any, so one of the two rows is probably a slip.',
  advice: 'Measure or read both sets again; answer the finding where it is really so.',
  source: commonPractice('what sharing a fixed total means'),
};

export const portGainsFromNeighbour: Check = { ...RULE, check };

/** Rows of the author only: a share above the limit that a port states for itself has its own rule. */
function check({ entry, derived }: CheckInput): Finding[] {
  const limits = new Set(entry.ports.flatMap((port) => (port.power === null ? [] : [port.power.path.join('.')])));
  const known = (derived.shares?.rows ?? []).filter((row) => row.path !== null && !limits.has(row.path.join('.')));
  return known.flatMap((larger) => larger.shares.flatMap((share) => findingFor(share, larger, known)));
}

/** A pool is only an upper bound of what one port gets, so a pool in the larger set shows nothing. */
function findingFor(share: PortShare, larger: SetRow, known: readonly SetRow[]): Finding[] {
  if (share.pool.length > 1 || larger.path === null) return [];
  const before = known
    .filter(
      (row) =>
        row.ports.length < larger.ports.length && row.ports.includes(share.port) && row.ports.every((port) => larger.ports.includes(port)),
    )
    .flatMap((row) => row.shares.filter((own) => own.port === share.port).map((own) => ({ row, power: own.power })))
    .filter(({ power }) => share.power.low > power.high * (1 + PRINTED_SLACK))
    .at(-1);
  if (before === undefined) return [];
  const message = `${share.port} gets ${rounded(share.power.nominal)} W with ${larger.key} in use and only ${rounded(before.power.nominal)} W with ${before.row.key}.`;
  return [findingOf(RULE, atValue(...larger.path), { message, subject: share.port })];
}
