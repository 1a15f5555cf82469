import type { EfficiencyPoint, PortLoad } from '../entry/entry.ts';
import { electricPower } from '../formulas/energy/electric-power.ts';
import { sumOfPowers } from '../formulas/energy/sum-of-powers.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { factValue } from './fact-value.ts';

/** Output power of a measured point: volts times amperes, of several ports their sum, or watts as written. */
export function outputPower(point: EfficiencyPoint): Known<'power'> {
  const { load, loads } = point;
  if (loads.some(isMeasured))
    return foldFormula<'power'>(
      loads.map(portPower),
      (first, second) => applyFormula(sumOfPowers, { first, second }),
      'output power of a port',
    );
  const volts = point.measuredOutput ?? point.output;
  if (point.current !== null && volts !== null)
    return applyFormula(electricPower, { voltage: factValue(volts), current: factValue(point.current) });
  if (load?.quantity.dimension === 'power') return factValue({ ...load, quantity: { ...load.quantity, dimension: 'power' } });
  return missing(load === null ? 'load not given' : 'output current not measured', ['output current']);
}

function isMeasured({ current, power }: PortLoad): boolean {
  return current !== null || power !== null;
}

/** Output power of one of several ports. */
export function portPower({ port, power, current, output, measuredOutput }: PortLoad): Known<'power'> {
  if (power !== null) return factValue(power);
  const volts = measuredOutput ?? output;
  if (volts === null || current === null) return missing(`output power of ${port} not measured`, [`output power of ${port}`]);
  return applyFormula(electricPower, { voltage: factValue(volts), current: factValue(current) });
}
