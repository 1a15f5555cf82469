import type { Entry, MeasuredPoint } from '../../entry/entry.ts';
import { meterOnYCapacitor } from '../../formulas/capacitor/meter-on-y-capacitor.ts';
import { yCapacitorCurrent } from '../../formulas/capacitor/y-capacitor-current.ts';
import { currentIntoResistance } from '../../formulas/resistor/current-into-resistance.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { conditionValue } from '../condition-value.ts';
import type { InputFigures } from '../derived.ts';
import { assumed, factValue, isOf } from '../fact-value.ts';
import { yCapacitanceOf, yFrequencyOf } from '../y-capacitor-current-of.ts';
import type { TouchVoltage } from './mains-figures.ts';

/** Each voltage that was read between output and earth, beside what the Y capacitors put on such a meter and the current that they pass. */
export function touchVoltages(entry: Entry, input: InputFigures): readonly TouchVoltage[] {
  return entry.measurements.filter(({ subject }) => subject === 'touch voltage').flatMap((point) => ofPoint(entry, input, point));
}

function ofPoint(entry: Entry, input: InputFigures, point: MeasuredPoint): readonly TouchVoltage[] {
  if (!isOf(point.value, 'voltage')) return [];
  const { line, load } = point.conditions;
  const meter =
    load === undefined ? assumed('resistance', CUSTOMARY.meterResistance) : conditionValue(point, 'load', 'resistance', 'the meter');
  const supply = line === undefined ? input.highLine : lineOf(point, line);
  const into = { voltage: supply, frequency: yFrequencyOf(entry), capacitance: yCapacitanceOf(entry) };
  return [
    {
      written: point.value.quantity.written,
      line: line ?? null,
      path: point.path,
      meter,
      through: applyFormula(currentIntoResistance, { voltage: factValue(point.value, { bound: 'use' }), resistance: meter }),
      divider: applyFormula(meterOnYCapacitor, { ...into, meter }),
      passed: applyFormula(yCapacitorCurrent, into),
    },
  ];
}

/** "230 V 50 Hz" is a voltage with its frequency, of which the printed one is used. */
function lineOf(point: MeasuredPoint, written: string): Known<'voltage'> {
  const volts = written.replace(/[\s/,]*\d+\s*Hz\s*$/iu, '');
  return conditionValue({ ...point, conditions: { ...point.conditions, line: volts } }, 'line', 'voltage', 'line voltage');
}
