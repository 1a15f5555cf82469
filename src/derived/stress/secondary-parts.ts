import type { Part, Stage } from '../../entry/entry.ts';
import { centreTapReverseVoltage } from '../../formulas/rectifier/centre-tap-reverse-voltage.ts';
import { rectifierReverseVoltage } from '../../formulas/rectifier/rectifier-reverse-voltage.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import type { StressRow } from '../derived.ts';
import { assumed, factValue, isOf } from '../fact-value.ts';
import { fittedParts } from '../fitted-parts.ts';
import { outputVoltage } from '../output-voltage.ts';
import { ratingOf } from '../part-rating.ts';
import { converterOf, FLYBACK_KINDS, PFC_KINDS, stageById } from '../stage-kinds.ts';
import { turnsRatioOf } from '../turns-ratio-of.ts';
import { judgeVoltage } from './judge.ts';
import type { StressInput } from './stress-input.ts';

/** Parts behind the transformer: rectifiers against what they block, output capacitors against the highest voltage on them. */
export function secondaryParts(given: StressInput): readonly StressRow[] {
  const { entry, policy } = given;
  const rectifiers = ['synchronous-rectifier', 'rectifier-diode'].flatMap((role) =>
    fittedParts(entry, role).flatMap((part) => rectifierRow(part, given)),
  );
  const capacitors = fittedParts(entry, 'output-capacitor').map((part) => {
    const stage = stageById(entry, part.stage);
    const stress = stage === null ? missing(`stage ${part.stage} not described`, [`stage ${part.stage}`]) : outputVoltage(entry, stage);
    return judgeVoltage({ part, quantity: 'voltage', stress, rating: ratingOf(part, 'voltage', 'DC') }, policy);
  });
  return [...rectifiers, ...capacitors];
}

/** A rectifier that stands in the mains bridge or the PFC is not behind the transformer and gets no row here. */
function rectifierRow(part: Part, given: StressInput): readonly StressRow[] {
  const stage = stageById(given.entry, part.stage);
  if (stage !== null && (stage.kind === 'rectifier' || stage.kind === 'dc-input' || PFC_KINDS.includes(stage.kind))) return [];
  const converter = converterOf(given.entry, part.stage);
  if (converter === null) return [];
  const stress = reverseVoltage(part, converter, given);
  return [judgeVoltage({ part, quantity: 'reverse voltage', stress, rating: ratingOf(part, 'voltage', 'DC') }, given.policy)];
}

function reverseVoltage(part: Part, converter: Stage, { entry, bus }: StressInput): Known<'voltage'> {
  const output = outputVoltage(entry, converter);
  if (FLYBACK_KINDS.includes(converter.kind)) {
    return applyFormula(rectifierReverseVoltage, { input: bus, turnsRatio: turnsRatioOf(converter), output });
  }
  const names = part.references.join(', ');
  if (converter.kind !== 'llc-half-bridge') return missing(`no stress model yet for ${names} behind ${converter.id}`, ['stage model']);
  const [, first, second] = converter.turns;
  if (first === undefined || second !== first) {
    return missing(`whether the secondary of ${converter.id} has a centre tap is not known`, [`turns of ${converter.id}`]);
  }
  return applyFormula(centreTapReverseVoltage, { output, drop: dropOf(part, converter) });
}

function dropOf(part: Part, converter: Stage): Known<'voltage'> {
  const given = converter.parameters['diode drop'];
  if (isOf(given, 'voltage')) return factValue(given, { bound: 'use' });
  return assumed('voltage', part.role === 'rectifier-diode' ? CUSTOMARY.diodeDrop : CUSTOMARY.synchronousDrop);
}
