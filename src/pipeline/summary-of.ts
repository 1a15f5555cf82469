import { traitsOf } from '../corpus/traits-of.ts';
import { instrumentsUsed } from '../derived/bench/instruments-used.ts';
import type { Entry, Part } from '../entry/entry.ts';
import { portLayout } from '../sharing/port-layout.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Verdict } from '../derived/derived.ts';
import type { PreparedSheet, SheetSummary } from '../corpus/prepared.ts';

/** What lists need of a sheet. */
export function summaryOf({ entry, derived }: Pick<PreparedSheet, 'entry' | 'derived'>): Omit<SheetSummary, 'digest'> {
  const verdicts = (verdict: Verdict): number => derived.stress.filter((row) => row.verdict === verdict).length;
  return {
    slug: entry.slug,
    number: entry.number,
    revision: derived.revision,
    maker: entry.device.maker,
    name: entry.device.name,
    title: entry.title,
    summary: entry.summary,
    kind: entry.device.kind,
    status: entry.status,
    published: entry.published ?? '',
    ports: entry.ports.map(({ id, connector }) => ({ id, connector })),
    hasPlanner: portLayout(entry, derived.shares) !== null,
    outline: outlineOf(entry),
    ...(entry.body.size?.size.shape === 'cylinder' ? { round: true } : {}),
    ratedWatts: nominal(derived.ratedPower, 1),
    densityWPerCm3: nominal(derived.size.density, 1e6),
    bulkMicrofarads: nominal(derived.bulk.capacitance, 1e-6),
    topology: derived.topology,
    family: derived.family,
    glyphs: entry.stages.map((stage) => stage.kind),
    over: verdicts('over'),
    straddles: verdicts('straddles'),
    withheld: verdicts('withheld'),
    within: verdicts('within'),
    partsIdentified: entry.parts.filter(isIdentified).reduce((count, part) => count + part.references.length, 0),
    parts: entry.parts.flatMap(rowOf),
    partMakers: [...new Set(entry.parts.map((part) => part.maker).filter((maker) => maker !== null))],
    corrections: entry.corrections,
    formerAddresses: entry.formerAddresses,
    recall: entry.recall,
    instruments: instrumentsUsed(entry, derived.logs),
    traits: traitsOf(entry, derived),
  };
}

function nominal(known: Known, perSi: number): number | null {
  return isMissing(known) ? null : known.nominal / perSi;
}

function isIdentified(part: Part): boolean {
  return part.number !== null || part.marking !== null;
}

function rowOf(part: Part): SheetSummary['parts'][number][] {
  if (part.number === null) return [];
  const { maker, number, role, stage, references } = part;
  return [{ maker, number, role, stage, references, rating: part.rating?.written ?? null }];
}

/** Edges in millimetres; a cylinder by the box around it. */
function outlineOf(entry: Entry): SheetSummary['outline'] {
  const size = entry.body.size?.size;
  if (size === undefined) return null;
  if (size.shape === 'box')
    return [millimetres(size.edges[0].nominal), millimetres(size.edges[1].nominal), millimetres(size.edges[2].nominal)];
  return [millimetres(size.diameter.nominal), millimetres(size.diameter.nominal), millimetres(size.height.nominal)];
}

function millimetres(metres: number): number {
  return Number((metres * 1000).toPrecision(12));
}
