import type { Entry, Stage } from '../../entry/entry.ts';
import { packVoltage } from '../../formulas/energy/pack-voltage.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { stageOf } from '../../stages/index.ts';
import type { Span } from '../../stages/models/stage-model.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { InputFigures } from '../derived.ts';
import { assumed, edgeValue, isOf } from '../fact-value.ts';
import { largest } from '../offered.ts';
import { outputVoltage } from '../output-voltage.ts';

type Volts = Known<'voltage'>;

/** Direct voltage that feeds a block behind the barrier or of no barrier: its own `input`, else the output of the block before it. */
export function feedingVoltage(entry: Entry, stage: Stage, input: InputFigures): Span<'voltage'> {
  const own = isOf(stage.parameters['input'], 'voltage') ? edgesOf(stage, 'input') : null;
  const feeder = feederOf(entry, stage);
  const before = feeder === null ? fromSupply(entry, stage, input) : outputSpan(entry, feeder, input);
  if (own === null) return withOverVoltage(before, stage);
  // An author's "input" is what was met; where the block before lets more through until it shuts down, that is the corner.
  const lets = feeder !== null && feeder.kind === 'dc-input' ? before.highest : own.highest;
  return withOverVoltage({ highest: largest([own.highest, lets]) ?? own.highest, lowest: own.lowest }, stage);
}

/** The nearest block before this one that feeds it by name, or that feeds whatever comes next. */
function feederOf(entry: Entry, stage: Stage): Stage | null {
  const before = entry.stages.slice(0, entry.stages.indexOf(stage)).reverse();
  const named = before.find((candidate) => candidate.feeds.includes(stage.id));
  return named ?? before.find((candidate) => candidate.feeds.length === 0 && isSource(candidate)) ?? null;
}

/** Whether a block hangs on the supply of the device itself, through its input alone. */
export function isFedBySupply(entry: Entry, stage: Stage): boolean {
  const feeder = feederOf(entry, stage);
  return entry.nameplate.input?.kind === 'DC' && (feeder === null || feeder.kind === 'dc-input');
}

/** Whether a block hangs on the pack inside the device. */
export function isFedByPack(entry: Entry, stage: Stage): boolean {
  return feederOf(entry, stage)?.kind === 'battery-pack';
}

function isSource({ kind }: Stage): boolean {
  return stageOf(kind)?.side === 'barrier' || kind === 'dc-input' || kind === 'battery-pack';
}

/** What a block puts on the next one. */
export function outputSpan(entry: Entry, feeder: Stage, input: InputFigures): Span<'voltage'> {
  if (feeder.kind === 'dc-input') return vehicleSpan(feeder, input);
  if (feeder.kind === 'battery-pack') return packSpan(feeder);
  const highest = outputVoltage(entry, feeder);
  const own = feeder.parameters['output'];
  return { highest, lowest: isOf(own, 'voltage') ? edgeValue(own, 'low', own.path.join('.')) : highest };
}

/** A direct input stands from the voltage at which it stops to the one at which it shuts down, or to the highest printed one. */
function vehicleSpan(stage: Stage, input: InputFigures): Span<'voltage'> {
  const given = isOf(stage.parameters['input'], 'voltage') ? edgesOf(stage, 'input') : null;
  const low = parameterEdge(stage, 'brown-out', 'low');
  return withOverVoltage({ highest: given?.highest ?? input.highLine, lowest: low ?? given?.lowest ?? input.lowLine }, stage);
}

function packSpan(stage: Stage): Span<'voltage'> {
  const high = parameterEdge(stage, 'over-voltage', 'high');
  const low = parameterEdge(stage, 'brown-out', 'low');
  const isIron = /phosphate/iu.test(stage.mode ?? '');
  return {
    highest: high ?? cellsAt(stage, assumed('voltage', isIron ? CUSTOMARY.fullIronPhosphateCell : CUSTOMARY.fullCell)),
    lowest: low ?? cellsAt(stage, assumed('voltage', CUSTOMARY.emptyCell)),
  };
}

function cellsAt(stage: Stage, cell: Volts): Volts {
  if (stage.cells === null) return missing(`cells in series of ${stage.id} not given`, [`cells of ${stage.id}`]);
  const { series } = stage.cells;
  const source = { title: 'The entry itself', section: [...stage.path, 'cells'].join('.'), standing: 'read' } as const;
  return applyFormula(packVoltage, {
    cells: assume('ratio', series, series, series, `${series} cells in series, as counted`, source),
    cell,
  });
}

/** Without a block before it, a converter hangs on the supply where that is direct. */
function fromSupply(entry: Entry, stage: Stage, input: InputFigures): Span<'voltage'> {
  if (entry.nameplate.input?.kind === 'DC') return { highest: input.highLine, lowest: input.lowLine };
  const none = missing(`input voltage of ${stage.id} not given`, [`input of ${stage.id}`]);
  return { highest: none, lowest: none };
}

function withOverVoltage(span: Span<'voltage'>, stage: Stage): Span<'voltage'> {
  const shutdown = parameterEdge(stage, 'over-voltage', 'high');
  if (shutdown === null || stageOf(stage.kind)?.side === 'primary') return span;
  return isMissing(span.highest) ? { ...span, highest: shutdown } : { ...span, highest: largest([span.highest, shutdown]) ?? shutdown };
}

function edgesOf(stage: Stage, key: string): Span<'voltage'> {
  const none = missing(`${key} of ${stage.id} not given`, [`${key} of ${stage.id}`]);
  return { highest: parameterEdge(stage, key, 'high') ?? none, lowest: parameterEdge(stage, key, 'low') ?? none };
}

function parameterEdge(stage: Stage, key: string, edge: 'low' | 'high'): Volts | null {
  const fact = stage.parameters[key];
  return isOf(fact, 'voltage') ? edgeValue(fact, edge, fact.path.join('.')) : null;
}
