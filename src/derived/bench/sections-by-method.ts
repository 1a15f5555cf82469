import type { Allocation, BenchLink, Body, Entry, Part, Port, Sharing, Stage } from '../../entry/entry.ts';
import type { BenchSubject } from '../../entry/bench-subjects.ts';
import { madeBy, type FactMaker } from './fact-by-method.ts';
import type { MethodFinder } from './methods-named.ts';

interface Maker {
  readonly find: MethodFinder['find'];
  readonly by: FactMaker;
}

/** What was measured in the sections that name no method of their own: body, ports, shares, stages, parts, the proof of discharge. */
export function sectionsByMethod(entry: Entry, { find, by }: Maker): Entry {
  const of = (subject: BenchSubject): readonly BenchLink[] => find(null, subject, [subject]);
  return {
    ...entry,
    body: bodyBy(entry.body, of('size'), of('mass'), by),
    ports: entry.ports.map((port) => portBy(port, of('ports'), of('sharing'), by)),
    sharing: entry.sharing === null ? null : sharingBy(entry.sharing, of('sharing'), by),
    stages: entry.stages.map((stage) => stageBy(stage, of('stages'), by)),
    parts: entry.parts.map((part) => partBy(part, of('parts'))),
    discharged: entry.discharged === null ? null : { ...entry.discharged, voltage: by(entry.discharged.voltage, of('discharged')) },
  };
}

function bodyBy(body: Body, sizes: readonly BenchLink[], masses: readonly BenchLink[], by: FactMaker): Body {
  const { size, volume, mass } = body;
  const edges = size === null || size.evidence !== 'measured' ? size : { ...size, ...madeBy(sizes) };
  return { ...body, size: edges, volume: by(volume, sizes), mass: by(mass, masses) };
}

/** A limit that was measured is the share of the port alone. */
function portBy(port: Port, offers: readonly BenchLink[], shares: readonly BenchLink[], by: FactMaker): Port {
  const limits = { power: by(port.power, shares), peak: by(port.peak, shares) };
  return port.evidence === 'measured' && offers.length > 0 ? { ...port, ...limits, madeBy: madeBy(offers) } : { ...port, ...limits };
}

function sharingBy(sharing: Sharing, methods: readonly BenchLink[], by: FactMaker): Sharing {
  const of = (allocation: Allocation): Allocation => (methods.length === 0 ? allocation : { ...allocation, madeBy: madeBy(methods) });
  return { ...sharing, total: by(sharing.total, methods), allocations: sharing.allocations.map(of) };
}

function stageBy(stage: Stage, methods: readonly BenchLink[], by: FactMaker): Stage {
  const parameters = Object.entries(stage.parameters).map(([key, fact]) => [key, by(fact, methods)] as const);
  return { ...stage, parameters: Object.fromEntries(parameters), turnsRatio: ratioBy(stage.turnsRatio, methods, by) };
}

function ratioBy(ratio: Stage['turnsRatio'], methods: readonly BenchLink[], by: FactMaker): Stage['turnsRatio'] {
  if (ratio === null) return null;
  if (ratio.by === 'ratio') return { ...ratio, ratio: by(ratio.ratio, methods) };
  return { ...ratio, primary: by(ratio.primary, methods), secondary: by(ratio.secondary, methods) };
}

function partBy(part: Part, methods: readonly BenchLink[]): Part {
  const isMeasured = part.evidence === 'measured' || part.measured !== null;
  return isMeasured && methods.length > 0 ? { ...part, madeBy: madeBy(methods) } : part;
}
