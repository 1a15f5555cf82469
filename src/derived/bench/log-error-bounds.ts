import type { Instrument } from '../../entry/bench.ts';
import type { LogChannel } from '../../logs/log-summary.ts';
import type { Dimension } from '../../units/dimension.ts';
import { readingUncertainty } from './reading-uncertainty.ts';
import type { InstrumentsOfLog } from './instruments-of-log.ts';

/** Sizes of voltage and current beside a power, SI: a product is as good as both. */
export interface Beside {
  readonly voltage: number;
  readonly current: number;
}

/** What wrote one column, and how far the true value may lie from a reading of that size; `within` is null where no accuracy is stated. */
export interface ErrorBound {
  /** Id of the instrument of the bench. */
  readonly instrument: string;
  readonly within: ((size: number, beside: Beside) => number) | null;
  /** The share of the reading in it, and whose gains that share is: two columns of the same gains err to the same side by it. */
  readonly gain: { readonly of: string; readonly share: number } | null;
}

/** An accuracy as a share of the reading and a part that does not grow with it. */
interface Linear {
  readonly instrument: string;
  readonly share: number;
  readonly fixed: number;
}

/** The column of a dimension that an instrument wrote; the first of several that states an accuracy for it counts. */
export function errorBound(dimension: Dimension, resolution: number, instruments: readonly Instrument[]): ErrorBound | null {
  const linear = linearBound(dimension, resolution, instruments);
  if (linear !== null)
    return {
      instrument: linear.instrument,
      within: (size) => linear.share * size + linear.fixed,
      gain: { of: `${linear.instrument} ${dimension}`, share: linear.share },
    };
  const [only] = instruments;
  return only === undefined || instruments.length > 1 ? null : { instrument: only.id, within: null, gain: null };
}

/**
 * The bound of a power. Where it was computed from volts and amperes their accuracies decide, and where the file has a column for it,
 * the accuracy that the instrument states for watts, if it does.
 */
export function powerBound(
  power: LogChannel,
  [voltage, current]: readonly [LogChannel | undefined, LogChannel | undefined],
  instruments: InstrumentsOfLog,
): ErrorBound | null {
  const stated = linearBound('power', power.resolution, instruments.of(power.quantity));
  const own = errorBound('power', power.resolution, instruments.of(power.quantity));
  const product = productBound(channelBound(voltage, instruments), channelBound(current, instruments));
  return power.head === null ? (product ?? own) : stated === null ? (product ?? own) : own;
}

function channelBound(channel: LogChannel | undefined, instruments: InstrumentsOfLog): Linear | null {
  return channel === undefined ? null : linearBound(channel.dimension, channel.resolution, instruments.of(channel.quantity));
}

/** (v ± Δv)(i ± Δi): the shares add, and each fixed part counts with the size of the other factor. */
function productBound(voltage: Linear | null, current: Linear | null): ErrorBound | null {
  if (voltage === null || current === null) return null;
  const share = (1 + voltage.share) * (1 + current.share) - 1;
  return {
    instrument: voltage.instrument,
    within: (size, beside) =>
      share * size +
      (1 + voltage.share) * current.fixed * beside.voltage +
      (1 + current.share) * voltage.fixed * beside.current +
      voltage.fixed * current.fixed,
    gain: { of: `${voltage.instrument} voltage, ${current.instrument} current`, share },
  };
}

function linearBound(dimension: Dimension, resolution: number, instruments: readonly Instrument[]): Linear | null {
  for (const { id, accuracies } of instruments) {
    const accuracy = accuracies.find(({ quantity }) => quantity === dimension);
    if (accuracy !== undefined) return { instrument: id, share: accuracy.ofReading, fixed: readingUncertainty(accuracy, 0, resolution) };
  }
  return null;
}
