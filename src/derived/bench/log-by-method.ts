import type { LogChange, LogChannel, LogSummary } from '../../logs/log-summary.ts';
import type { Dimension } from '../../units/dimension.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';

/** A log whose every figure leads to the method of the bench that it was written by. */
export function logByMethod(log: LogSummary, method: string): LogSummary {
  const { peak, sustained, droppedAfter, underLoad } = log.power;
  return {
    ...log,
    duration: by(log.duration, method),
    channels: log.channels.map((channel) => channelBy(channel, method)),
    energy: knownBy(log.energy, method),
    charge: knownBy(log.charge, method),
    power: {
      peak: knownBy(peak, method),
      sustained: knownBy(sustained, method),
      droppedAfter: knownBy(droppedAfter, method),
      underLoad: knownBy(underLoad, method),
    },
    steps: log.steps.map((step) => ({ ...step, changes: step.changes.map((change) => changeBy(change, method)) })),
  };
}

function channelBy(channel: LogChannel, method: string): LogChannel {
  const { mean, lowest, highest } = channel;
  return {
    ...channel,
    mean: by(mean, method),
    lowest: { ...lowest, value: by(lowest.value, method) },
    highest: { ...highest, value: by(highest.value, method) },
  };
}

function changeBy(change: LogChange, method: string): LogChange {
  const { before, after, lowest, highest, settling } = change;
  return {
    ...change,
    before: by(before, method),
    after: by(after, method),
    lowest: by(lowest, method),
    highest: by(highest, method),
    settling: knownBy(settling, method),
  };
}

function knownBy<D extends Dimension>(known: Known<D>, method: string): Known<D> {
  return isMissing(known) ? known : by(known, method);
}

function by<D extends Dimension>(value: Value<D>, method: string): Value<D> {
  const { origin } = value;
  return origin.evidence === 'measured' ? { ...value, origin: { ...origin, method } } : value;
}
