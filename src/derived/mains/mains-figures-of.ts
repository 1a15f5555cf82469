import type { Entry, Part } from '../../entry/entry.ts';
import { inrushCurrent } from '../../formulas/protection/inrush-current.ts';
import { seriesResistance } from '../../formulas/resistor/series-resistance.ts';
import { TOUCH_CURRENT_LIMITS, type TouchCurrentLimit } from '../../standards/touch-current.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import type { Known, Value } from '../../values/value.ts';
import type { InputFigures } from '../derived.ts';
import { fittedParts, perPiece } from '../fitted-parts.ts';
import { ratingOf } from '../part-rating.ts';
import { yCapacitorCurrentOf } from '../y-capacitor-current-of.ts';
import type { MainsFigures, TouchRow } from './mains-figures.ts';
import { touchVoltages } from './touch-voltages.ts';
import { standingWords, verdictOf, xDischarge } from './x-discharge.ts';

/** Limits in rms for equipment without and with earth; those of other kinds of current are not set beside a computed rms. */
const COMPARED: readonly string[] = ['60950-not-earthed', '62368-es1', '60950-hand-held', '60950-earthed', '62368-es2'];

/** Limits that hold for a device with an earth pin. */
const EARTHED: readonly string[] = ['60950-hand-held', '60950-earthed'];

/** Inrush, discharge of the plug pins and touch current; null for a device that is not on the mains. */
export function mainsFigures(entry: Entry, input: InputFigures): MainsFigures | null {
  if (entry.nameplate.input?.kind !== 'AC') return null;
  const limiter = limiterOf(fittedParts(entry, 'ntc-thermistor'));
  const yCurrent = yCapacitorCurrentOf(entry, input);
  return {
    limiter,
    inrush: applyFormula(inrushCurrent, { crest: input.peak, resistance: limiter }),
    ...xDischarge(entry, input),
    yCurrent,
    touch: TOUCH_CURRENT_LIMITS.filter(({ id }) => COMPARED.includes(id)).map((limit) => touchRow(limit, yCurrent, hasNoEarth(entry))),
    touchVoltages: touchVoltages(entry, input),
  };
}

/** Cold resistance of the thermistors; several keys stand one behind the other, in the line and in the neutral. */
function limiterOf(parts: readonly Part[]): Known<'resistance'> {
  if (parts.length === 0) return missing('no inrush limiter among the parts', ['NTC thermistor']);
  const all = parts.flatMap((part) => perPiece(part, ratingOf(part, 'resistance')));
  return foldFormula(all, (first, second) => applyFormula(seriesResistance, { first, second }), 'resistance of the inrush limiter');
}

/** Class II, or an inlet of two poles, by the author's word. */
function hasNoEarth({ nameplate, body }: Entry): boolean {
  return nameplate.marks.some((mark) => /class\s*(?:II|2)\b/iu.test(mark)) || /\bC[78]\b/u.test(body.inlet ?? '');
}

function touchRow({ id, name, amperes, source }: TouchCurrentLimit, current: Known<'current'>, noEarth: boolean): TouchRow {
  const origin: Value['origin'] = { evidence: 'assumed', reason: name, source };
  const most: Value<'current'> = { dimension: 'current', low: amperes, nominal: amperes, high: amperes, significant: 2, origin };
  return {
    limit: id,
    name,
    most,
    verdict: noEarth && EARTHED.includes(id) ? 'not asked' : verdictOf(current, most),
    standing: standingWords(source),
  };
}
