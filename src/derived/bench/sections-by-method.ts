import type { Allocation, BenchLink, Body, Entry, Part, Port, Sharing, Stage } from '../../entry/entry.ts';
import type { BenchSubject } from '../../entry/bench-subjects.ts';
import type { FactMaker } from './fact-by-method.ts';
import type { MethodFinder } from './methods-named.ts';

type Maker = FactMaker & Pick<MethodFinder, 'find'>;

/** What was measured in the sections that name no method of their own: body, ports, shares, stages, parts, the proof of discharge. */
export function sectionsByMethod(entry: Entry, { find, ...maker }: Maker): Entry {
  const of = (subject: BenchSubject): readonly BenchLink[] => find(null, subject, [subject]);
  return {
    ...entry,
    body: bodyBy(entry.body, of('size'), of('mass'), maker),
    ports: entry.ports.map((port) => portBy(port, of('ports'), of('sharing'), maker)),
    sharing: entry.sharing === null ? null : sharingBy(entry.sharing, of('sharing'), maker),
    stages: entry.stages.map((stage) => stageBy(stage, of('stages'), maker)),
    parts: entry.parts.map((part) => partBy(part, of('parts'), maker)),
    discharged: entry.discharged === null ? null : { ...entry.discharged, voltage: maker.by(entry.discharged.voltage, of('discharged')) },
  };
}

function bodyBy(body: Body, sizes: readonly BenchLink[], masses: readonly BenchLink[], { by, made }: FactMaker): Body {
  const { size, volume, mass } = body;
  const edges = size === null || size.evidence !== 'measured' ? size : { ...size, ...made(sizes) };
  return { ...body, size: edges, volume: by(volume, sizes), mass: by(mass, masses) };
}

/** A limit that was measured is the share of the port alone. */
function portBy(port: Port, offers: readonly BenchLink[], shares: readonly BenchLink[], { by, made }: FactMaker): Port {
  const limits = { power: by(port.power, shares), peak: by(port.peak, shares) };
  return port.evidence === 'measured' && offers.length > 0 ? { ...port, ...limits, madeBy: made(offers) } : { ...port, ...limits };
}

function sharingBy(sharing: Sharing, methods: readonly BenchLink[], { by, made }: FactMaker): Sharing {
  const of = (allocation: Allocation): Allocation => (methods.length === 0 ? allocation : { ...allocation, madeBy: made(methods) });
  return { ...sharing, total: by(sharing.total, methods), allocations: sharing.allocations.map(of) };
}

function stageBy(stage: Stage, methods: readonly BenchLink[], maker: FactMaker): Stage {
  const parameters = Object.entries(stage.parameters).map(([key, fact]) => [key, maker.by(fact, methods)] as const);
  return { ...stage, parameters: Object.fromEntries(parameters), turnsRatio: ratioBy(stage.turnsRatio, methods, maker) };
}

function ratioBy(ratio: Stage['turnsRatio'], methods: readonly BenchLink[], { by }: FactMaker): Stage['turnsRatio'] {
  if (ratio === null) return null;
  if (ratio.by === 'ratio') return { ...ratio, ratio: by(ratio.ratio, methods) };
  return { ...ratio, primary: by(ratio.primary, methods), secondary: by(ratio.secondary, methods) };
}

function partBy(part: Part, methods: readonly BenchLink[], { made }: FactMaker): Part {
  const isMeasured = part.evidence === 'measured' || part.measured !== null;
  return isMeasured && methods.length > 0 ? { ...part, madeBy: made(methods) } : part;
}
