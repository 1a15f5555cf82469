import { powerEfficiency } from '../formulas/loss/power-efficiency.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import { applyFormula } from '../values/apply-formula.ts';
import type { Known, Value } from '../values/value.ts';

/** Mean power out over mean power in of a log that holds both sides; null where it holds one. */
export function logEfficiency({ channels }: LogSummary): Known<'ratio'> | null {
  const meanOf = (quantity: string): Value<'power'> | null => {
    const mean = channels.find((channel) => channel.quantity === quantity)?.mean;
    return mean !== undefined && isPower(mean) ? mean : null;
  };
  const [output, input] = [meanOf('power'), meanOf('input power')];
  return output === null || input === null || !(input.low > 0) ? null : applyFormula(powerEfficiency, { output, input });
}

function isPower(value: Value): value is Value<'power'> {
  return value.dimension === 'power';
}
