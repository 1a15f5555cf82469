import type { Entry } from '../entry/entry.ts';
import { highLine } from '../formulas/mains/high-line.ts';
import { inputCurrent } from '../formulas/mains/input-current.ts';
import { mainsPeak } from '../formulas/mains/mains-peak.ts';
import { CUSTOMARY, INCLUDES_TOLERANCE_FROM } from '../standards/customary-values.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { valueOf } from '../values/from-quantity.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { InputFigures } from './derived.ts';
import { assumed } from './fact-value.ts';
import { fullLoadEfficiency } from './full-load-efficiency.ts';
import { largest } from './offered.ts';
import { hasPfc } from './stage-kinds.ts';
import { INPUT_AT, supplyLines } from './supply-lines.ts';

/** What the supply puts on the input, from the nameplate: highest line and its crest, lowest line and the current there. */
export function inputFigures(entry: Entry, power: Known<'power'>): InputFigures {
  const supply = supplyLines(entry.nameplate);
  if (supply === null) {
    const none = missing('no input printed on the nameplate', [INPUT_AT]);
    return { highLine: none, peak: none, lowLine: none, inputCurrent: none };
  }
  const { kind, highest, lowest } = supply;
  const highLine = kind === 'AC' ? withMainsTolerance(highest) : highest;
  return {
    highLine,
    peak: kind === 'AC' ? applyFormula(mainsPeak, { rms: highLine }) : highLine,
    lowLine: lowest,
    inputCurrent: currentAt(entry, lowest, powerAtInput(entry, lowest, power), kind),
  };
}

/** Current at the lowest line and full load. A battery between input and output parts the two, so there it says nothing. */
function currentAt(entry: Entry, lowest: Known<'voltage'>, power: Known<'power'>, kind: 'AC' | 'DC'): Known<'current'> {
  if (entry.stages.some((stage) => stage.kind === 'battery-pack')) return missing('a battery stands between input and output');
  return applyFormula(inputCurrent, {
    power,
    efficiency: fullLoadEfficiency(entry, lowest, power) ?? assumed('ratio', CUSTOMARY.efficiency),
    powerFactor: powerFactorOf(entry, kind),
    voltage: lowest,
  });
}

/** Power that the device gives at its lowest input, where the nameplate says that it depends on the input voltage. */
function powerAtInput(entry: Entry, lowest: Known<'voltage'>, power: Known<'power'>): Known<'power'> {
  const { totalAtInput, evidence } = entry.nameplate;
  if (totalAtInput.length === 0 || isMissing(lowest)) return power;
  const reached = totalAtInput.filter((step) => step.from.nominal <= lowest.nominal);
  const best = largest(reached.map((step) => valueOf({ quantity: step.power, evidence }, INPUT_AT, { bound: 'use' })));
  return best ?? missing('output power at the lowest input voltage not given', ['output power at the lowest input']);
}

/** A printed maximum of 264 V and above has the tolerance of the mains in it; a lower one has not. */
function withMainsTolerance(printed: Known<'voltage'>): Known<'voltage'> {
  if (isMissing(printed) || printed.nominal >= INCLUDES_TOLERANCE_FROM) return printed;
  return applyFormula(highLine, { printed, factor: assumed('ratio', CUSTOMARY.mainsTolerance) });
}

function powerFactorOf(entry: Entry, kind: 'AC' | 'DC'): Known<'ratio'> {
  if (kind === 'DC') return assumed('ratio', CUSTOMARY.unityPowerFactor);
  return assumed('ratio', hasPfc(entry) ? CUSTOMARY.powerFactorWith : CUSTOMARY.powerFactorWithout);
}
