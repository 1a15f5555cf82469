import type { EfficiencyPoint, Entry } from '../entry/entry.ts';
import { highLine } from '../formulas/mains/high-line.ts';
import { inputCurrent } from '../formulas/mains/input-current.ts';
import { mainsPeak } from '../formulas/mains/mains-peak.ts';
import { CUSTOMARY, INCLUDES_TOLERANCE_FROM } from '../standards/customary-values.ts';
import type { SupplyInput } from '../units/quantity.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { InputFigures } from './derived.ts';
import { assumed, edgeValue, factValue } from './fact-value.ts';
import { hasPfc } from './stage-kinds.ts';

const AT = 'nameplate.input';

/** What the supply puts on the input, from the nameplate: highest line and its crest, lowest line and the current there. */
export function inputFigures(entry: Entry, power: Known<'power'>): InputFigures {
  const input = entry.nameplate.input;
  if (input === null) {
    const none = missing('no input printed on the nameplate', [AT]);
    return { highLine: none, peak: none, lowLine: none, inputCurrent: none };
  }
  const highest = highestLine(input);
  const lowLine = edgeValue({ quantity: input.voltage, evidence: 'printed' }, 'low', AT);
  return {
    highLine: highest,
    peak: input.kind === 'AC' ? applyFormula(mainsPeak, { rms: highest }) : highest,
    lowLine,
    inputCurrent: applyFormula(inputCurrent, {
      power,
      efficiency: efficiencyAt(entry, lowLine),
      powerFactor: powerFactorOf(entry, input),
      voltage: lowLine,
    }),
  };
}

/** A printed maximum of 264 V and above has the tolerance of the mains in it; a lower one of a mains input has not. */
function highestLine(input: SupplyInput): Known<'voltage'> {
  const printed = edgeValue({ quantity: input.voltage, evidence: 'printed' }, 'high', AT);
  if (input.kind === 'DC' || isMissing(printed) || printed.nominal >= INCLUDES_TOLERANCE_FROM) return printed;
  return applyFormula(highLine, { printed, factor: assumed('ratio', CUSTOMARY.mainsTolerance) });
}

function powerFactorOf(entry: Entry, input: SupplyInput): Known<'ratio'> {
  if (input.kind === 'DC') return assumed('ratio', CUSTOMARY.unityPowerFactor);
  return assumed('ratio', hasPfc(entry) ? CUSTOMARY.powerFactorWith : CUSTOMARY.powerFactorWithout);
}

/** A full-load efficiency measured near the lowest line, else the customary range. */
function efficiencyAt(entry: Entry, lowLine: Known<'voltage'>): Known<'ratio'> {
  const measured = entry.efficiency.find((point) => isFullLoad(point) && isNear(point, lowLine));
  const fact = measured?.efficiency ?? null;
  const value = fact === null ? null : factValue(fact);
  return value === null || isMissing(value) || value.low <= 0 ? assumed('ratio', CUSTOMARY.efficiency) : value;
}

function isFullLoad(point: EfficiencyPoint): boolean {
  return point.load !== null && point.load.quantity.dimension === 'ratio' && point.load.quantity.nominal >= 0.99;
}

/** Within 30 % above the lowest line: 115 V stands for 100 V or 90 V, 230 V does not. */
function isNear(point: EfficiencyPoint, lowLine: Known<'voltage'>): boolean {
  return point.line !== null && !isMissing(lowLine) && point.line.quantity.nominal <= 1.3 * lowLine.nominal;
}
