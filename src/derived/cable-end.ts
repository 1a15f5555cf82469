import type { CableUsed, EfficiencyPoint } from '../entry/entry-measurements.ts';
import { cableLoopResistance } from '../formulas/cable/cable-loop-resistance.ts';
import { cableVoltageDrop } from '../formulas/cable/cable-voltage-drop.ts';
import { lowestCableEndVoltage } from '../formulas/cable/lowest-cable-end-voltage.ts';
import { gaugeArea } from '../formulas/wire/gauge-area.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { valueOf } from '../values/from-quantity.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';

/** Resistance of a cable of known length and gauge, there and back; missing where either is not written. */
export function cableResistance(cable: CableUsed): Known<'resistance'> {
  const { length, gauge } = cable;
  const at = cable.path.join('.');
  if (length === null || gauge === null) return missing('length and gauge of the cable are not both written', [at]);
  const origin = { evidence: 'marked', written: cable.written, at } as const;
  const number = { dimension: 'ratio', low: gauge, nominal: gauge, high: gauge, significant: 4, origin } as const;
  const area = applyFormula(gaugeArea, { gauge: number });
  const metres = valueOf({ quantity: length, evidence: 'marked' }, at);
  return applyFormula(cableLoopResistance, { length: metres, area });
}

/** Drop of the cable of a measured point; null where the point names no cable or no current. */
export function cableDropAt(point: EfficiencyPoint): Known<'voltage'> | null {
  if (point.cable === null || point.current === null) return null;
  return applyFormula(cableVoltageDrop, {
    resistance: cableResistance(point.cable),
    current: valueOf(point.current, point.current.path.join('.')),
  });
}

/** Lowest voltage that may rightly be read at the cable's far end; null where the set voltage is not known. */
export function lowestAtCableEnd(point: EfficiencyPoint): Known<'voltage'> | null {
  if (point.output === null) return null;
  return applyFormula(lowestCableEndVoltage, { voltage: valueOf(point.output, point.output.path.join('.')) });
}
