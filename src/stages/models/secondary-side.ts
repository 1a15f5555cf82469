import { centreTapReverseVoltage } from '../../formulas/rectifier/centre-tap-reverse-voltage.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import type { StageGiven, StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/** Drop of the rectifier: the author's, else what diodes or synchronous rectifiers usually drop. */
export function rectifierDrop(given: StageGiven, isDiode: boolean): Known<'voltage'> {
  const own = given.parameter('diode drop', 'voltage', 'high');
  if (own !== null) return own;
  const { low, nominal, high, reason, source } = isDiode ? CUSTOMARY.diodeDrop : CUSTOMARY.synchronousDrop;
  return assume('voltage', low, nominal, high, reason, source);
}

/** How the secondary of a resonant or forward converter is wound, as far as the turns or the mode tell. */
export function secondaryOf(given: StageGiven): 'centre tap' | 'full bridge' | null {
  if (/full.bridge/u.test(given.mode)) return 'full bridge';
  const [, first, second] = given.turns;
  return /cent(?:re|er).?tap/u.test(given.mode) || (first !== undefined && second === first) ? 'centre tap' : null;
}

/** Twice the output behind a centre tap, the output behind a full bridge; withheld where nobody knows which. */
export function resonantReverseVoltage(given: StageGiven, isDiode: boolean): Known<'voltage'> {
  const secondary = secondaryOf(given);
  if (secondary === 'full bridge') return given.output.highest;
  if (secondary === null) return missing(`whether the secondary of ${given.id} has a centre tap is not known`, [`turns of ${given.id}`]);
  return applyFormula(centreTapReverseVoltage, { output: given.output.highest, drop: rectifierDrop(given, isDiode) });
}

/** Stresses of the parts at the output of any block: its highest voltage, over everything that is offered. */
export const OUTPUT_SIDE: StageModel['stresses'] = {
  'output-capacitor': (given) => [voltageStress('voltage', given.output.highest)],
  'load-switch': (given) => [voltageStress('off-state voltage', given.output.highest)],
};
