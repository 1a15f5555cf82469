import type { Bench } from '../../entry/bench.ts';
import type { Entry } from '../../entry/entry.ts';
import type { LogChange, LogChannel, LogStep, LogSummary } from '../../logs/log-summary.ts';
import type { Dimension } from '../../units/dimension.ts';
import { supportedDigits } from '../../values/supported-digits.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import { logByMethod } from './log-by-method.ts';
import { instrumentFinder } from './instruments-named.ts';
import { instrumentsOfLog, type InstrumentsOfLog } from './instruments-of-log.ts';
import { errorBound, powerBound, type Beside, type ErrorBound } from './log-error-bounds.ts';

/**
 * The logs with the accuracy of their instruments in every figure. A stated accuracy is a limit that holds for each row and may lie to
 * the same side in all of them (a gain, an offset), so the mean of a million rows is no better than one row, and a sum over time is as
 * wide as its rows are.
 */
export function logsOnBench(logs: readonly LogSummary[], entry: Entry, bench: Bench): readonly LogSummary[] {
  const { find } = instrumentFinder(entry, bench);
  return logs.map((log) => {
    const file = entry.logs.find(({ id }) => id === log.id);
    const [method] = file?.byMethod ?? [];
    const read = file === undefined || file.instrument === null ? log : logOnBench(log, instrumentsOfLog(file, find));
    return method === undefined ? read : logByMethod(read, method.id);
  });
}

interface Bounds {
  readonly of: (quantity: string) => ErrorBound | null;
  readonly time: ErrorBound | null;
}

function logOnBench(log: LogSummary, instruments: InstrumentsOfLog): LogSummary {
  const bounds = boundsOf(log, instruments);
  const most = besideIn(log.channels, greatest);
  const power = bounds.of('power');
  const timed = <D extends Dimension>(known: Known<D>): Known<D> => widenedKnown(known, bounds.time, most);
  return {
    ...log,
    duration: widened(log.duration, bounds.time, most),
    channels: log.channels.map((channel) => channelOnBench(channel, bounds.of(channel.quantity), log.channels)),
    energy: sumOnBench(log.energy, log, 'power', bounds),
    charge: sumOnBench(log.charge, log, 'current', bounds),
    power: {
      peak: widenedKnown(log.power.peak, power, most),
      sustained: widenedKnown(log.power.sustained, power, most),
      droppedAfter: timed(log.power.droppedAfter),
      underLoad: timed(log.power.underLoad),
    },
    steps: log.steps.map((step) => stepOnBench(step, bounds, most)),
  };
}

function boundsOf({ channels, interval }: LogSummary, instruments: InstrumentsOfLog): Bounds {
  const channelOf = (quantity: string): LogChannel | undefined => channels.find((channel) => channel.quantity === quantity);
  const bounds = new Map(
    channels.map((channel) => {
      const { quantity, dimension, resolution } = channel;
      const input = quantity === 'input power' ? 'input ' : '';
      const isPower = quantity === 'power' || quantity === 'input power';
      const bound = isPower
        ? powerBound(channel, [channelOf(`${input}voltage`), channelOf(`${input}current`)], instruments)
        : errorBound(dimension, resolution, instruments.of(quantity));
      return [quantity, bound] as const;
    }),
  );
  const clock = errorBound('time', Math.min(1, interval), instruments.of('time'));
  return { of: (quantity) => bounds.get(quantity) ?? null, time: clock?.within == null ? null : clock };
}

function channelOnBench(channel: LogChannel, bound: ErrorBound | null, channels: readonly LogChannel[]): LogChannel {
  const { mean, lowest, highest } = channel;
  const side = channel.quantity === 'input power' ? 'input ' : '';
  const most = besideIn(channels, greatest, side);
  const beside = besideIn(channels, usual, side);
  const size = usual(channel);
  const counts = bound?.gain == null || bound.within === null ? null : bound.within(size, beside) - bound.gain.share * size;
  return {
    ...channel,
    mean: widened(mean, bound, beside, size),
    ...(bound?.gain == null ? {} : { apartFromGain: { of: bound.gain.of, mean: widenedBy(mean, counts, bound.instrument) } }),
    lowest: { ...lowest, value: widened(lowest.value, bound, most) },
    highest: { ...highest, value: widened(highest.value, bound, most) },
  };
}

/** A sum over time: the bound of the mean, as long as the log lasted; an error of the clock comes on top. */
function sumOnBench<D extends Dimension>(sum: Known<D>, log: LogSummary, quantity: string, bounds: Bounds): Known<D> {
  const channel = log.channels.find((each) => each.quantity === quantity);
  const bound = bounds.of(quantity);
  if (isMissing(sum) || channel === undefined || bound === null) return sum;
  const seconds = log.duration.nominal;
  const ofRows = bound.within === null ? null : bound.within(usual(channel), besideIn(log.channels, usual)) * seconds;
  const most = besideIn(log.channels, greatest);
  const late = seconds > 0 && bounds.time?.within != null ? bounds.time.within(seconds, most) / seconds : 0;
  return widenedBy(sum, ofRows === null ? null : ofRows * (1 + late) + usual(channel) * seconds * late, bound.instrument);
}

function stepOnBench(step: LogStep, bounds: Bounds, most: Beside): LogStep {
  const sizeOf = (quantity: 'voltage' | 'current'): number => {
    const change = step.changes.find((each) => each.quantity === quantity);
    if (change === undefined) return most[quantity];
    return Math.max(...[change.before, change.after, change.lowest, change.highest].map(({ nominal }) => Math.abs(nominal)));
  };
  const beside = { voltage: sizeOf('voltage'), current: sizeOf('current') };
  return { ...step, changes: step.changes.map((change) => changeOnBench(change, bounds.of(change.quantity), beside)) };
}

function changeOnBench(change: LogChange, bound: ErrorBound | null, beside: Beside): LogChange {
  const of = (value: Value): Value => widened(value, bound, beside);
  return { ...change, before: of(change.before), after: of(change.after), lowest: of(change.lowest), highest: of(change.highest) };
}

/** The greatest size that a column reaches. */
function greatest({ lowest, highest }: LogChannel): number {
  return Math.max(Math.abs(lowest.value.nominal), Math.abs(highest.value.nominal));
}

/** The mean size of a column; the greatest where it changes sign, since its mean is then smaller than its rows. */
function usual(channel: LogChannel): number {
  const keepsSign = channel.lowest.value.nominal >= 0 || channel.highest.value.nominal <= 0;
  return keepsSign ? Math.abs(channel.mean.nominal) : greatest(channel);
}

function besideIn(channels: readonly LogChannel[], size: (channel: LogChannel) => number, side = ''): Beside {
  const of = (quantity: string): number => {
    const channel = channels.find((each) => each.quantity === `${side}${quantity}`);
    return channel === undefined ? 0 : size(channel);
  };
  return { voltage: of('voltage'), current: of('current') };
}

function widenedKnown<D extends Dimension>(known: Known<D>, bound: ErrorBound | null, beside: Beside): Known<D> {
  return isMissing(known) ? known : widened(known, bound, beside);
}

function widened<D extends Dimension>(
  value: Value<D>,
  bound: ErrorBound | null,
  beside: Beside,
  size: number = Math.abs(value.nominal),
): Value<D> {
  return bound === null ? value : widenedBy(value, bound.within?.(size, beside) ?? null, bound.instrument);
}

function widenedBy<D extends Dimension>(value: Value<D>, within: number | null, instrument: string): Value<D> {
  const [low, high] = [value.low - (within ?? 0), value.high + (within ?? 0)];
  const { origin } = value;
  return {
    ...value,
    low,
    high,
    significant: Math.min(value.significant, supportedDigits(low, value.nominal, high)),
    origin: origin.evidence === 'measured' ? { ...origin, instrument } : origin,
  };
}
