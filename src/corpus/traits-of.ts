import type { Derived, StressRow } from '../derived/derived.ts';
import { notRankedFor } from '../derived/efficiency/absent-conditions.ts';
import { tellingEfficiency, type TellingEfficiency } from '../derived/telling-efficiency.ts';
import type { Entry } from '../entry/entry.ts';
import { stageOf } from '../stages/index.ts';
import { restsOnAssumption } from '../values/trace.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { SheetTraits, TraitEfficiency, TraitStress } from './sheet-traits.ts';
import { fanOut, portTraits, sharingTraits } from './port-traits.ts';
import { valueTraits } from './value-traits.ts';

/** What other sheets are compared with. */
export function traitsOf(entry: Entry, derived: Derived): SheetTraits {
  const telling = tellingEfficiency(entry, derived);
  return {
    basis: entry.body.basis,
    massGrams: entry.body.mass === null ? null : trimmed(entry.body.mass.quantity.nominal * 1000),
    wattsPerKilogram: nominal(derived.size.specificPower),
    efficiency: efficiencyOf(entry, telling),
    stress: worstOfEach(derived.stress),
    isolated: entry.stages.some((stage) => stageOf(stage.kind)?.side === 'barrier'),
    rectification: rectificationOf(entry),
    fanOut: fanOut(entry),
    ports: portTraits(entry),
    sharing: sharingTraits(entry),
    values: valueTraits(entry),
    evidence: {
      ratedPower: evidenceOf(derived.ratedPower),
      density: evidenceOf(derived.size.density),
      mass: entry.body.mass?.evidence ?? null,
      specificPower: evidenceOf(derived.size.specificPower),
      efficiency: telling === null ? null : evidenceOf(telling.value),
      bulk: evidenceOf(derived.bulk.capacitance),
    },
  };
}

function nominal(known: Known): number | null {
  return isMissing(known) ? null : trimmed(known.nominal);
}

function evidenceOf(known: Known): string | null {
  if (isMissing(known)) return null;
  const { evidence } = known.origin;
  return evidence === 'computed' && restsOnAssumption(known) ? 'computed, rests on an assumption' : evidence;
}

/** Without the digits that only binary arithmetic adds. */
function trimmed(number: number): number {
  return Number(number.toPrecision(9));
}

function efficiencyOf(entry: Entry, telling: TellingEfficiency | null): TraitEfficiency | null {
  const ratio = telling === null ? null : nominal(telling.value);
  if (telling === null || ratio === null) return null;
  const point = telling.conditions;
  return {
    ratio,
    statistic: point.statistic,
    line: point.line?.quantity.written ?? null,
    place: point.place,
    lacking: notRankedFor(point, entry),
  };
}

/** One row for each role and quantity: the one with the least room below its limit; a withheld one only where no other is. */
function worstOfEach(rows: readonly StressRow[]): readonly TraitStress[] {
  const worst = new Map<string, TraitStress>();
  for (const { role, quantity, ratio, limit, verdict } of rows) {
    const trait = { role, quantity, ratio: isMissing(ratio) ? null : Number(ratio.nominal.toPrecision(4)), limit, verdict };
    const key = `${role} ${quantity}`;
    const held = worst.get(key);
    if (held === undefined || room(trait) < room(held)) worst.set(key, trait);
  }
  return [...worst.values()];
}

function room({ ratio, limit }: TraitStress): number {
  return ratio === null ? Number.POSITIVE_INFINITY : (limit ?? 1) - ratio;
}

/** How the isolated side, or the only one, rectifies: by driven switches or by diodes. */
function rectificationOf(entry: Entry): SheetTraits['rectification'] {
  const roles = new Set(entry.parts.map((part) => part.role));
  if (roles.has('synchronous-rectifier')) return 'synchronous';
  return roles.has('rectifier-diode') ? 'diode' : 'not known';
}
