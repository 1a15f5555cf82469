import type { EfficiencyPoint, PortLoad } from '../../entry/entry.ts';
import { powerLoss } from '../../formulas/energy/power-loss.ts';
import { powerEfficiency } from '../../formulas/loss/power-efficiency.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';
import { outputPower } from '../output-power.ts';
import type { FullLoads, RunPoint, RunPort } from './efficiency-figures.ts';
import { spanOf } from './run-mean.ts';
import { withoutSharedGain } from './shared-gain.ts';

/** What full load is: the current of one port, or the loads of several. */
export interface FullLoad {
  readonly fullAmps: number | null;
  readonly ports: readonly RunPort[];
  readonly full: FullLoads | null;
}

/** One measured point, computed as far as it goes. */
export function runPoint(source: EfficiencyPoint, full: FullLoad): RunPoint {
  const output = outputPower(source);
  if (source.notSustained !== null) return unsustainedPoint(source, full);
  const input = source.input === null ? missing('input power not given', ['input power']) : factValue(source.input);
  const stated = source.efficiency === null ? null : factValue(source.efficiency);
  // What was measured on both sides is worked out; a stated figure stands where only it is there.
  const alike = withoutSharedGain(source);
  const sides = alike?.input == null ? { output, input } : { output: outputPower(alike), input: factValue(alike.input) };
  const worked = applyFormula(powerEfficiency, sides);
  const efficiency = isMissing(worked) ? (stated ?? worked) : worked;
  return {
    source,
    ...shareOf(source, full),
    output,
    efficiency,
    span: spanOf(efficiency, source),
    loss: applyFormula(powerLoss, { input, output }),
  };
}

/** A load that was set and not held: nothing was measured at it. */
function unsustainedPoint(source: EfficiencyPoint, full: FullLoad): RunPoint {
  const none = missing('not sustained');
  return { source, ...shareOf(source, full), output: none, efficiency: none, span: null, loss: none };
}

/** Share of full load, and what each of several ports carried of its own; per cent in the entry are those of `stated`. */
export function shareOf(source: EfficiencyPoint, full: FullLoad, stated: FullLoad = full): Pick<RunPoint, 'share' | 'spread'> {
  if (source.loads.length > 0) return sharedShare(source, full, stated);
  const { load } = source;
  const percent = load?.quantity.dimension === 'ratio' && stated === full ? load.quantity.nominal : null;
  return { share: percent ?? over(ampsOf(source, stated.fullAmps), full.fullAmps), spread: null };
}

function over(amps: number | null, whole: number | null): number | null {
  return amps === null || whole === null || whole <= 0 ? null : amps / whole;
}

/** Current of a point of one port, A. */
export function ampsOf(source: EfficiencyPoint, fullAmps: number | null): number | null {
  if (source.current !== null) return source.current.quantity.nominal;
  const { load } = source;
  if (load === null) return null;
  const { dimension, nominal } = load.quantity;
  if (dimension === 'ratio') return fullAmps === null ? null : nominal * fullAmps;
  const volts = (source.measuredOutput ?? source.output)?.quantity.nominal ?? null;
  if (volts === null || volts <= 0 || nominal <= 0) return null;
  return dimension === 'power' ? nominal / volts : volts / nominal;
}

/** Of several ports the share of the power that all have at full load. */
function sharedShare(source: EfficiencyPoint, { ports, full }: FullLoad, stated: FullLoad): Pick<RunPoint, 'share' | 'spread'> {
  const { load } = source;
  const percent = load?.quantity.dimension === 'ratio' ? load.quantity.nominal : null;
  if (full === null) return { share: percent, spread: null };
  const watts = ports.map(({ setting }, index) => (setting ?? 0) * (full.amps[index] ?? 0));
  const whole = watts.reduce((sum, each) => sum + each, 0);
  const spread = source.loads.map((each, index) => {
    const named = percent === null ? null : percent * (stated.full?.amps[index] ?? 0);
    return over(drawnAmps(each) ?? named, full.amps[index] ?? null);
  });
  if (spread.every((share) => share !== null))
    return { share: spread.reduce((sum, share, index) => sum + share * (watts[index] ?? 0), 0) / whole, spread };
  return { share: load?.quantity.dimension === 'power' ? over(load.quantity.nominal, whole) : percent, spread: null };
}

function drawnAmps({ current, power, output, measuredOutput }: PortLoad): number | null {
  if (current !== null) return current.quantity.nominal;
  const volts = (measuredOutput ?? output)?.quantity.nominal ?? 0;
  return power === null || volts <= 0 ? null : power.quantity.nominal / volts;
}
