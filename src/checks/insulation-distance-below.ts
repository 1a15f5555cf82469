import type { Finding } from '../diagnostics/finding.ts';
import type { DistanceRow } from '../derived/insulation/insulation-row.ts';
import type { DataPath } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'insulation-distance-below',
  title: 'A distance is shorter than the tables ask',
  severity: 'error',
  why: 'Across these millimetres stand the mains and whoever holds the plug. An indication from a caliper, not a compliance verdict.',
  advice: 'Measure again along the shortest way; where it is right, answer the finding: it is then a result of the review.',
  source: {
    title: 'IEC 60664-1:2020, tables F.1, F.2, F.5 and A.2',
    section: 'as tabulated in an open-source board-design program',
    standing: 'secondary',
  },
};

export const insulationDistanceBelow: Check = { ...RULE, check };

/** A clearance below this share of what is asked is no matter of reading a table. */
const CERTAIN = 0.5;

function check({ entry, derived }: CheckInput): Finding[] {
  return derived.insulation.flatMap((row, index) => {
    const place = entry.insulation[index];
    if (place === undefined || row.kind === null) return [];
    const isGrave = row.kind === 'reinforced' || row.kind === 'basic';
    return [
      ...judged('clearance', row.clearance, row.place, row.kind, place.path, isGrave),
      ...judged('creepage', row.creepage, row.place, row.kind, place.path, false),
    ];
  });
}

/** Only a clearance can be an error: what creepage asks hangs on a material group that may be assumed from memory. */
function judged(name: string, distance: DistanceRow, place: string, kind: string, path: DataPath, mayBeError: boolean): Finding[] {
  const { measured, required, verdict } = distance;
  if (verdict !== 'below' || isMissing(measured) || isMissing(required)) return [];
  const severity = mayBeError && measured.high < CERTAIN * required.nominal ? 'error' : 'warning';
  const message = `The ${name} of ${place} is ${rounded(measured.nominal * 1e3)} mm; ${kind} insulation there asks ${rounded(required.nominal * 1e3)} mm.`;
  return [findingOf(RULE, atKey(...path, name), { message, severity, subject: place })];
}
