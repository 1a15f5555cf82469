import type { Port } from '../../entry/entry.ts';
import { electricPower } from '../../formulas/energy/electric-power.ts';
import { loadCurrent } from '../../formulas/energy/load-current.ts';
import { sharedConverterCurrent } from '../../formulas/energy/shared-converter-current.ts';
import { sumOfCurrents } from '../../formulas/energy/sum-of-currents.ts';
import type { OutputPoint } from '../../stages/models/stage-model.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { largest } from '../offered.ts';
import { offeredCurrentAt, offeredPoints } from '../offered-points.ts';

/**
 * What one converter can be asked for by the ports that hang on it: at each voltage that one of them offers, the currents of all that can
 * stand at it, as far as the power that they share allows. A voltage that one port alone can stand at is that port's own.
 *
 * @param together power that at least two of the ports draw together
 */
export function jointPoints(ports: readonly Port[], together: Known<'power'>): readonly OutputPoint[] {
  const [only, ...more] = ports;
  if (only === undefined) return [];
  if (more.length === 0) return offeredPoints(only);
  const best = new Map<number, OutputPoint>();
  for (const point of ports.flatMap(offeredPoints)) {
    if (isMissing(point.voltage)) continue;
    const { nominal } = point.voltage;
    if (!best.has(nominal)) best.set(nominal, jointPoint(ports, point.voltage, together) ?? point);
  }
  return [...best].sort(([one], [other]) => one - other).map(([, point]) => point);
}

function jointPoint(ports: readonly Port[], voltage: OutputPoint['voltage'], together: Known<'power'>): OutputPoint | null {
  if (isMissing(voltage)) return null;
  const there = ports.filter((port) => port.offers.length === 0 || offeredCurrentAt(port, voltage.nominal) !== null);
  const own = there.flatMap((port) => offeredCurrentAt(port, voltage.nominal) ?? []);
  const alone = largest(own);
  const [first] = there;
  if (alone === null || first === undefined) return null;
  if (there.length === 1) return pointOf(voltage, alone, '');
  // What a port without known offers may draw is bounded by the shared power alone.
  const current =
    own.length < there.length
      ? larger(alone, applyFormula(loadCurrent, { power: together, voltage }))
      : applyFormula(sharedConverterCurrent, { alone, sum: sumOf(own), power: together, voltage });
  return pointOf(voltage, current, ` for ${there.map(({ id }) => id).join(' and ')} together`);
}

function sumOf(currents: readonly Known<'current'>[]): Known<'current'> {
  return foldFormula(currents, (first, second) => applyFormula(sumOfCurrents, { first, second }), 'current');
}

function larger(one: Known<'current'>, other: Known<'current'>): Known<'current'> {
  if (isMissing(one) || isMissing(other)) return isMissing(one) ? one : other;
  return other.high > one.high ? other : one;
}

function pointOf(voltage: Known<'voltage'>, current: Known<'current'>, of: string): OutputPoint {
  const volts = isMissing(voltage) ? '' : `${short(voltage.nominal)} V`;
  const amps = isMissing(current) ? '' : ` ${short(current.nominal)} A`;
  return { voltage, current, power: applyFormula(electricPower, { voltage, current }), name: `${volts}${amps}${of}` };
}

function short(number: number): string {
  return String(Number(number.toPrecision(3)));
}
