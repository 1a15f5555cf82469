import type { CableUsed, EfficiencyPoint, Entry, Fact, MeasuredPoint } from '../../entry/entry.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { conditionValue } from '../condition-value.ts';
import { ampsOf } from '../efficiency/run-point.ts';
import { runPort } from '../efficiency/shared-loads.ts';
import { factValue, isOf } from '../fact-value.ts';
import { lineVolts } from '../line-volts.ts';

/** An output voltage that was measured under a load, with what was said of it. */
export interface VoltageReading {
  readonly port: string | null;
  readonly place: EfficiencyPoint['place'];
  /** Voltage that was set. */
  readonly set: Known<'voltage'>;
  readonly value: Known<'voltage'>;
  /** The same, as it was written. */
  readonly fact: Fact<'voltage'>;
  /** Output current; missing where it is not known. */
  readonly current: Known<'current'>;
  /** Share of what the port is rated for at this setting; null where that is not known. */
  readonly share: number | null;
  /** Supply voltage, V; null where not given. */
  readonly line: number | null;
  readonly cable: CableUsed | null;
  /** Load and line of a reading by itself, as written. */
  readonly conditions: string | null;
  /** Whether other ports were loaded at the same time. */
  readonly isShared: boolean;
}

/** Every output voltage of the whole device that was measured at a setting: in runs of efficiency, then those given by themselves. */
export function voltageReadings(entry: Entry): readonly VoltageReading[] {
  return [
    ...entry.efficiency.flatMap((point) => ofPoint(entry, point)),
    ...entry.measurements.flatMap((point) => ofMeasurement(entry, point)),
  ];
}

function ofPoint(entry: Entry, point: EfficiencyPoint): readonly VoltageReading[] {
  const { of: stage, place, cable, line, loads } = point;
  if (stage !== null) return [];
  const about = { conditions: null, place, cable, line: line?.quantity.nominal ?? null, isShared: loads.length > 0 };
  const each = loads.length === 0 ? [point] : loads;
  return each.flatMap(({ port, output, measuredOutput, current }): readonly VoltageReading[] => {
    if (output === null || measuredOutput === null) return [];
    const set = factValue(output);
    const percent = point.load?.quantity.dimension === 'ratio' && current === null ? point.load.quantity.nominal : null;
    const amps = loads.length === 0 ? ampsOf(point, null) : (current?.quantity.nominal ?? null);
    const share = percent ?? shareOf(entry, port, set, amps);
    return [{ ...about, port, set, value: factValue(measuredOutput), fact: measuredOutput, current: known(current), share }];
  });
}

function ofMeasurement(entry: Entry, point: MeasuredPoint): readonly VoltageReading[] {
  const { subject, value, conditions } = point;
  if (subject !== 'regulation' || !isVoltage(value)) return [];
  const port = conditions['port'] ?? null;
  const set = conditionValue(point, 'output', 'voltage', 'set voltage');
  const load = loadOf(entry, point, port, set);
  const said = (['load', 'line'] as const).flatMap((key) => conditions[key] ?? []);
  return [
    {
      port,
      place: placeOf(conditions['at']),
      set,
      value: factValue(value),
      fact: value,
      ...load,
      line: lineVolts(conditions['line']),
      cable: null,
      conditions: said.length === 0 ? null : said.join(', '),
      isShared: port?.includes(' + ') === true,
    },
  ];
}

/** Load of a reading by itself: "3 A", "0 A", "100 %". */
function loadOf(entry: Entry, point: MeasuredPoint, port: string | null, set: Known<'voltage'>): Pick<VoltageReading, 'current' | 'share'> {
  const percent = conditionValue(point, 'load', 'ratio', 'load');
  const amps = conditionValue(point, 'load', 'current', 'load');
  if (!isMissing(percent)) return { current: missing('current not given', ['current']), share: percent.nominal };
  return { current: amps, share: shareOf(entry, port, set, isMissing(amps) ? null : amps.nominal) };
}

function known(fact: Fact<'current'> | null): Known<'current'> {
  return fact === null ? missing('current not given', ['current']) : factValue(fact);
}

function shareOf(entry: Entry, port: string | null, set: Known<'voltage'>, amps: number | null): number | null {
  const id = portOf(entry, port);
  if (id === null || isMissing(set) || amps === null) return null;
  const { fullAmps } = runPort(entry, id, set.nominal);
  return fullAmps === null || fullAmps <= 0 ? null : amps / fullAmps;
}

/** A device with one output needs not name it. */
function portOf({ ports }: Entry, id: string | null): string | null {
  if (id !== null) return id;
  const outputs = ports.filter((port) => port.direction !== 'input');
  return outputs.length === 1 ? (outputs[0]?.id ?? null) : null;
}

function isVoltage(fact: Fact): fact is Fact<'voltage'> {
  return isOf(fact, 'voltage');
}

/** "board", "connector" or "cable end"; null for anything else. */
export function placeOf(written: string | undefined): EfficiencyPoint['place'] {
  return written === 'board' || written === 'connector' || written === 'cable end' ? written : null;
}

/**
 * Two readings of one instrument, each with what its counts leave open alone: a gain error lies to the same side in both, so that it
 * cancels in their ratio and nearly so in their difference. As they are where they were not read on one instrument.
 */
export function apartFromGain(one: VoltageReading, other: VoltageReading): readonly [Known<'voltage'>, Known<'voltage'>] {
  const [first, second] = [one.fact.readOn, other.fact.readOn];
  const isOne = first?.fixed !== undefined && second?.fixed !== undefined && first.instrument === second.instrument;
  const of = ({ fact, value }: VoltageReading): Known<'voltage'> => {
    const { readOn, quantity } = fact;
    const counts = isOne && readOn?.fixed !== undefined ? factValue({ ...fact, readOn: { ...readOn, within: readOn.fixed } }) : value;
    return toLastDigit(counts, quantity.resolution);
  };
  return [of(one), of(other)];
}

/** A reading without an interval of its own is good to half of its last digit: the least that a difference of two of them has to carry. */
export function toLastDigit<D extends 'voltage' | 'current'>(value: Known<D>, resolution: number): Known<D> {
  if (isMissing(value) || value.low !== value.high) return value;
  const half = resolution / 2;
  return { ...value, low: value.nominal - half, high: value.nominal + half };
}
