import type { Entry, EntryEvidence, Stage } from '../../entry/entry.ts';
import { turnsRatioByWindingVoltages } from '../../formulas/flyback/turns-ratio-by-winding-voltages.ts';
import { turnsRatioFromVoltages } from '../../formulas/flyback/turns-ratio-from-voltages.ts';
import { turnsRatio } from '../../formulas/flyback/turns-ratio.ts';
import type { Quantity } from '../../units/quantity.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { writtenOrigin } from '../../values/from-quantity.ts';
import { missing } from '../../values/missing.ts';
import { EXACT_DIGITS } from '../../values/supported-digits.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import { edgeValue, factValue, isOf } from '../fact-value.ts';
import { fittedParts } from '../fitted-parts.ts';
import { outputVoltage } from '../output-voltage.ts';
import type { StatedRatio } from './winding-figures.ts';

/** Every way in which an entry gives the turns ratio of a stage, the one to compute with first. */
export function statedRatios(entry: Entry, stage: Stage): readonly StatedRatio[] {
  return [...ofTurns(stage), ...ofTransformer(entry, stage), ...ofRatio(entry, stage), ...ofReflected(entry, stage)];
}

/** The ratio that everything is computed with: turns, else those on the transformer, else a stated ratio, else reflected over output. */
export function turnsRatioOf(entry: Entry, stage: Stage): Known<'ratio'> {
  return statedRatios(entry, stage)[0]?.value ?? missing(`turns of ${stage.id} not given`, [`turns of ${stage.id}`]);
}

/** Two counts agree or they do not. */
const COUNTED = { below: 1e-3, above: 1e-3 };

function ofTurns(stage: Stage): readonly StatedRatio[] {
  if (stage.turns.length < 2) return [];
  const path = [...stage.path, 'turns'];
  const value = counted(stage.turns, stage.turnsEvidence, path.join('.'), stage.id);
  return [{ from: 'turns', value, written: stage.turns.join(':'), path, windings: stage.turns, room: COUNTED }];
}

/** Turns that stand in the rating of the transformer: "35:4:4 480 µH". */
function ofTransformer(entry: Entry, stage: Stage): readonly StatedRatio[] {
  return fittedParts(entry, 'transformer')
    .filter((part) => part.stage === stage.id && (part.rating?.turns.length ?? 0) > 1)
    .map((part) => {
      const windings = part.rating?.turns ?? [];
      const value = counted(windings, part.evidence, part.path.join('.'), part.references.join(', '));
      return { from: 'transformer', value, written: windings.join(':'), path: part.path, windings, room: COUNTED };
    });
}

function counted(turns: readonly number[], evidence: EntryEvidence, at: string, of: string): Known<'ratio'> {
  const [primary, secondary] = turns;
  if (primary === undefined || secondary === undefined || !(primary > 0 && secondary > 0))
    return missing(`turns of ${of} are not counts: ${turns.join(':')}`, [`turns of ${of}`]);
  const count = (number: number): Value<'ratio'> => {
    const origin = writtenOrigin(evidence, turns.join(':'), at);
    return { dimension: 'ratio', low: number, nominal: number, high: number, significant: EXACT_DIGITS, origin };
  };
  return applyFormula(turnsRatio, { primary: count(primary), secondary: count(secondary) });
}

/** Leakage takes some percent from the read winding; where it serves as the resonant inductance, up to a quarter (common practice). */
const LEAKAGE = { usual: 0.03, resonant: 0.25 };

function ofRatio(entry: Entry, stage: Stage): readonly StatedRatio[] {
  const stated = stage.turnsRatio;
  if (stated === null) return [];
  if (stated.by === 'ratio') {
    const { quantity, path } = stated.ratio;
    const room = lastDigit(quantity) + 0.01;
    return [
      { from: 'ratio', value: factValue(stated.ratio), written: quantity.written, path, windings: [], room: { below: room, above: room } },
    ];
  }
  const { primary, secondary } = stated;
  const value = applyFormula(turnsRatioByWindingVoltages, { primary: factValue(primary), secondary: factValue(secondary) });
  const digits = lastDigit(primary.quantity) + lastDigit(secondary.quantity);
  const isTank = stage.kind === 'llc-half-bridge' && fittedParts(entry, 'resonant-inductor').length === 0;
  const room = { below: digits + LEAKAGE.usual, above: digits + (isTank ? LEAKAGE.resonant : LEAKAGE.usual) };
  const written = `${primary.quantity.written} : ${secondary.quantity.written}`;
  return [{ from: 'winding voltages', value, written, path: primary.path, windings: [], room }];
}

/** Half of the last written digit, or half of the written span, over the number. */
function lastDigit({ low, high, nominal, resolution }: Quantity): number {
  const span = low === null || high === null ? 0 : high - low;
  return Math.max(span, resolution) / 2 / nominal;
}

/** The output at which it was read is often not the highest one, and the drop of the rectifier is in it (common practice). */
const REFLECTED = { below: 0.15, above: 0.15 };

function ofReflected(entry: Entry, stage: Stage): readonly StatedRatio[] {
  const fact = stage.parameters['reflected'];
  if (!isOf(fact, 'voltage')) return [];
  const reflected = edgeValue(fact, 'high', fact.path.join('.'));
  const value = applyFormula(turnsRatioFromVoltages, { reflected, output: outputVoltage(entry, stage) });
  return isMissing(value) && stage.turns.length > 1
    ? []
    : [{ from: 'reflected voltage', value, written: fact.quantity.written, path: fact.path, windings: [], room: REFLECTED }];
}
