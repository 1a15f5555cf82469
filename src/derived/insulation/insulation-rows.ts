import type { Entry, Fact, InsulationPlace } from '../../entry/entry.ts';
import { grooveWidth } from '../../standards/insulation/groove.ts';
import type { MaterialGroup } from '../../standards/insulation/creepage.ts';
import { requiredDistances, type InsulationKind } from '../../standards/insulation/required-distances.ts';
import type { Source, Value } from '../../values/value.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { BulkFigures, InputFigures } from '../derived.ts';
import { factValue } from '../fact-value.ts';
import type { DistanceRow, DistanceVerdict, InsulationRow } from './insulation-row.ts';
import { workingVoltage, type WorkingVoltage } from './working-voltage.ts';

const TABLES: Source = {
  title: 'IEC 60664-1:2020',
  section: 'tables F.1, F.2, F.5, F.8 and A.2, as tabulated in an open-source board-design program',
  standing: 'secondary',
};
const USUAL_ALTITUDE = 2000;

/** Every measured place beside what the tables ask there; empty for a device that is not on the mains. */
export function insulationRows(entry: Entry, input: InputFigures, bulk: BulkFigures): readonly InsulationRow[] {
  if (entry.nameplate.input?.kind !== 'AC') return [];
  return entry.insulation.map((place) => {
    const kind = kindOf(place);
    const isInside = kind === 'functional';
    return rowOf(place, kind, workingVoltage(entry, place, isInside, input, bulk));
  });
}

/** The kind that the author gives; mains against output must be reinforced; anything else is not guessed. */
function kindOf({ kind, between }: InsulationPlace): InsulationKind | null {
  if (kind === 'supplementary') return 'basic';
  if (kind !== null) return kind;
  return between !== null && /primary|mains|line/iu.test(between) && /secondary|output|user|case/iu.test(between) ? 'reinforced' : null;
}

function rowOf(place: InsulationPlace, kind: InsulationKind | null, voltage: WorkingVoltage): InsulationRow {
  const { rms, peak, mains } = voltage;
  const pollution = place.pollutionDegree ?? 2;
  const material: MaterialGroup = place.materialGroup ?? 'IIIa';
  const altitude = place.altitude?.quantity.nominal ?? USUAL_ALTITUDE;
  const base = { place: place.id, kind, rms, peak };
  if (kind === null || isMissing(rms) || isMissing(peak) || isMissing(mains)) {
    const reason = missing(kind === null ? 'kind of insulation not given' : 'working voltage not known', ['kind of insulation']);
    const withheld = (fact: Fact<'length'> | null): DistanceRow => distance(fact, reason);
    return { ...base, clearance: withheld(place.clearance), creepage: withheld(place.creepage), impulse: null, decidedBy: null, notes: [] };
  }
  const required = requiredDistances({
    kind,
    workingRms: rms.nominal,
    workingPeak: peak.nominal,
    lineToNeutral: mains.nominal,
    overvoltage: 'II',
    pollution,
    material,
    onBoard: kind === 'functional' && material !== 'IIIb',
    altitude,
  });
  return {
    ...base,
    clearance: distance(place.clearance, asLength(required.clearance, required.missing)),
    creepage: distance(place.creepage, asLength(required.creepage, required.missing)),
    impulse: required.impulse,
    decidedBy: required.decidedBy,
    notes: [
      ...(voltage.note === null ? [] : [voltage.note]),
      ...assumptions(place, kind),
      ...slotNotes(place, pollution, required.clearance),
    ],
  };
}

function assumptions(place: InsulationPlace, kind: InsulationKind): readonly string[] {
  return [
    ...(place.materialGroup === null ? ['Material group not given: FR-4 without data counts as IIIa (from memory).'] : []),
    ...(place.pollutionDegree === null ? ['Pollution degree not given: 2, as inside ordinary equipment.'] : []),
    ...(place.altitude === null ? ['Up to 2000 m.'] : []),
    ...(place.kind === null ? [`Kind not given: between these two it must be ${kind}.`] : []),
    ...(kind === 'functional' ? ['Creepage by the column for printed wiring.'] : []),
  ];
}

/** A slot narrower than the width that counts does not lengthen the way along the surface. */
function slotNotes(place: InsulationPlace, pollution: 1 | 2 | 3, clearance: number | null): readonly string[] {
  const slot = place.slot;
  const least = grooveWidth(pollution, clearance ?? Number.POSITIVE_INFINITY);
  if (slot === null || least === null) return [];
  const millimetres = slot.quantity.nominal * 1000;
  if (millimetres >= least - 1e-9) return [];
  return [`A slot of ${slot.quantity.written} is narrower than the ${least} mm that count: the creepage across it does not count.`];
}

function asLength(millimetres: number | null, why: readonly string[]): Known<'length'> {
  if (millimetres === null) return missing(why.join('; '));
  const metres = millimetres / 1000;
  const origin: Value['origin'] = { evidence: 'assumed', reason: 'required by the tables for this place', source: TABLES };
  return { dimension: 'length', low: metres, nominal: metres, high: metres, significant: 3, origin };
}

function distance(fact: Fact<'length'> | null, required: Known<'length'>): DistanceRow {
  const measured = fact === null ? missing('not measured', ['distance']) : factValue(fact, { bound: 'use' });
  return { measured, required, verdict: verdictOf(measured, required) };
}

function verdictOf(measured: Known<'length'>, required: Known<'length'>): DistanceVerdict {
  if (isMissing(measured) || isMissing(required)) return 'withheld';
  if (measured.low >= required.nominal * (1 - 1e-9)) return 'within';
  return measured.high < required.nominal ? 'below' : 'straddles';
}
