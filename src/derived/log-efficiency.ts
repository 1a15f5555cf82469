import { powerEfficiency } from '../formulas/loss/power-efficiency.ts';
import type { LogChannel, LogSummary } from '../logs/log-summary.ts';
import { applyFormula } from '../values/apply-formula.ts';
import type { Known, Value } from '../values/value.ts';

/**
 * Mean power out over mean power in of a log that holds both sides; null where it holds one. Where both were written with the same gains
 * (one instrument for both sides), a gain error lies to the same side in both and cancels; what the counts leave open does not.
 */
export function logEfficiency({ channels }: LogSummary): Known<'ratio'> | null {
  const channelOf = (quantity: string): LogChannel | null => channels.find((channel) => channel.quantity === quantity) ?? null;
  const [out, taken] = [channelOf('power'), channelOf('input power')];
  const isAlike = out?.apartFromGain !== undefined && out.apartFromGain.of === taken?.apartFromGain?.of;
  const meanOf = (channel: LogChannel | null): Value<'power'> | null => {
    const mean = isAlike ? channel?.apartFromGain?.mean : channel?.mean;
    return mean !== undefined && isPower(mean) ? mean : null;
  };
  const [output, input] = [meanOf(out), meanOf(taken)];
  return output === null || input === null || !(input.low > 0) ? null : applyFormula(powerEfficiency, { output, input });
}

function isPower(value: Value): value is Value<'power'> {
  return value.dimension === 'power';
}
