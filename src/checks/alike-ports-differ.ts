import type { Finding } from '../diagnostics/finding.ts';
import { exchangesOf } from '../sharing/alike-ports.ts';
import { impliedRow } from '../sharing/set-rows.ts';
import type { SetRow } from '../sharing/share-matrix.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'alike-ports-differ',
  title: 'Ports said to be alike have different shares',
  severity: 'warning',
  why: 'Alike ports fill the rows that they imply; if they differ, those rows are wrong.',
  advice: 'Take the ports out of `alike`, or correct the row.',
  source: commonPractice('definition of alike'),
};

export const alikePortsDiffer: Check = { ...RULE, check };

function check({ derived }: CheckInput): Finding[] {
  const matrix = derived.shares;
  if (matrix === null || matrix.alike.length === 0) return [];
  const known = matrix.rows.filter((row) => row.standing === 'known' && row.order === null);
  return known.flatMap((row, index) => {
    const against = exchangesOf(row.ports, matrix.alike, matrix.ports)
      .map((exchange) => impliedRow(row, exchange, null))
      .flatMap((implied) => known.slice(0, index).filter((other) => other.key === implied.key && differs(other, implied)))[0];
    if (against === undefined || row.path === null) return [];
    const message = `${row.key} gets ${sharesOf(row)} and ${against.key}, alike by declaration, ${sharesOf(against)}.`;
    return [findingOf(RULE, atValue(...row.path), { message, subject: row.key })];
  });
}

/** Compared as sorted shares: which of two alike ports gets the larger one is no contradiction. */
function differs(one: SetRow, other: SetRow): boolean {
  const others = sortedShares(other);
  return sortedShares(one).some((power, place) => Math.abs(power - (others[place] ?? power)) > power * PRINTED_SLACK);
}

function sortedShares(row: SetRow): number[] {
  return row.shares.map((share) => share.power.nominal).sort((one, other) => one - other);
}

function sharesOf(row: SetRow): string {
  return row.shares.map((share) => `${rounded(share.power.nominal)} W`).join(' + ');
}
