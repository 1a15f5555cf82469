import type { Entry, Part } from '../../entry/entry.ts';
import { rcDischargeTime } from '../../formulas/capacitor/rc-discharge-time.ts';
import { rcVoltageAfter } from '../../formulas/capacitor/rc-voltage-after.ts';
import { parallelResistance } from '../../formulas/resistor/parallel-resistance.ts';
import { seriesResistance } from '../../formulas/resistor/series-resistance.ts';
import { DISCHARGE_RULES, es1CapacitorVoltage, type DischargeRule } from '../../standards/x-capacitor-discharge.ts';
import type { Source, Value } from '../../values/value.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import { shortStanding } from '../../values/short-standing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { capacitorBank } from '../capacitor-bank.ts';
import type { InputFigures } from '../derived.ts';
import { fittedParts, perPiece, pieces } from '../fitted-parts.ts';
import { ratingOf } from '../part-rating.ts';
import type { DischargeRow, LimitVerdict, MainsFigures } from './mains-figures.ts';

type Resistance = Known<'resistance'>;

/** What holds charge across the plug pins, what leads it away, and every rule by its name. */
export function xDischarge(
  entry: Entry,
  input: InputFigures,
): Pick<MainsFigures, 'xCapacitance' | 'bleed' | 'hasDischargeIc' | 'discharge'> {
  const capacitors = fittedParts(entry, 'x-capacitor');
  const xCapacitance = capacitorBank(capacitors, (part) => ratingOf(part, 'capacitance'), 'X capacitor');
  const bleed = bleedAcrossLine(entry, capacitors);
  const hasDischargeIc = fittedParts(entry, 'discharge-ic').length > 0;
  const rows = capacitors.length === 0 ? [] : DISCHARGE_RULES.map((rule) => rowOf(rule, input.peak, xCapacitance, bleed, hasDischargeIc));
  return { xCapacitance, bleed, hasDischargeIc, discharge: rows };
}

/** Bleed resistors that stand with an X capacitor; keys side by side, the pieces of one key as its arrangement says. */
function bleedAcrossLine(entry: Entry, capacitors: readonly Part[]): Resistance {
  const found = fittedParts(entry, 'bleed-resistor').filter((part) => capacitors.some(({ stage }) => stage === part.stage));
  if (found.length === 0) return missing('no bleed resistor across the line among the parts', ['bleed resistor across the line']);
  return foldFormula(found.map(ofKey), (first, second) => applyFormula(parallelResistance, { first, second }), 'bleed resistance');
}

function ofKey(part: Part): Resistance {
  const one = ratingOf(part, 'resistance');
  if (pieces(part) === 1) return one;
  const names = part.references.join(', ');
  if (part.arrangement === 'single' || part.arrangement === 'separate') {
    return missing(`whether ${names} stand in series or in parallel is not said`, [`arrangement of ${names}`]);
  }
  const formula = part.arrangement === 'series' ? seriesResistance : parallelResistance;
  return foldFormula(perPiece(part, one), (first, second) => applyFormula(formula, { first, second }), 'bleed resistance');
}

function rowOf(
  rule: DischargeRule,
  start: Known<'voltage'>,
  capacitance: Known<'capacitance'>,
  resistance: Resistance,
  hasIc: boolean,
): DischargeRow {
  const limit = limitOf(rule, start, capacitance);
  const time = assume('time', rule.seconds, rule.seconds, rule.seconds, `${rule.name} looks then`, rule.source);
  const path =
    isMissing(resistance) && hasIc ? missing('a discharge IC leads the charge away: measure the pins', ['pin voltage']) : resistance;
  const left = applyFormula(rcVoltageAfter, { start, time, resistance: path, capacitance });
  const isAsked = rule.aboveFarads === null || isMissing(capacitance) || capacitance.nominal > rule.aboveFarads * (1 + 1e-9);
  return {
    rule: rule.id,
    name: rule.name,
    seconds: rule.seconds,
    limit,
    left,
    time: applyFormula(rcDischargeTime, { resistance: path, capacitance, start, end: limit }),
    verdict: isAsked && rule.writtenFor === 'chargers' ? verdictOf(left, limit) : 'not asked',
    writtenFor: rule.writtenFor,
    standing: standingWords(rule.source),
  };
}

/** The voltage a rule allows: fixed, a share of the crest, or by the table of capacitance of IEC 62368-1. */
function limitOf(rule: DischargeRule, start: Known<'voltage'>, capacitance: Known<'capacitance'>): Known<'voltage'> {
  if ('shareOfPeak' in rule.reach) {
    if (isMissing(start)) return start;
    const { low, nominal, high } = start;
    const share = rule.reach.shareOfPeak;
    return { ...start, low: low * share, nominal: nominal * share, high: high * share, origin: limitOrigin(rule) };
  }
  const fixed = rule.reach.volts;
  if (rule.id !== '62368-plug') return exactly(fixed, rule);
  return isMissing(capacitance)
    ? missing('capacitance across the line not known', ['X capacitance'])
    : exactly(es1CapacitorVoltage(capacitance.nominal), rule);
}

function exactly(volts: number, rule: DischargeRule): Value<'voltage'> {
  return { dimension: 'voltage', low: volts, nominal: volts, high: volts, significant: 3, origin: limitOrigin(rule) };
}

function limitOrigin(rule: DischargeRule): Value['origin'] {
  return { evidence: 'assumed', reason: rule.name, source: rule.source };
}

/** Where a value with its interval stands to a limit. */
export function verdictOf(value: Known, limit: Known): LimitVerdict {
  if (isMissing(value) || isMissing(limit)) return 'withheld';
  if (value.high <= limit.nominal) return 'within';
  return value.low > limit.nominal ? 'over' : 'straddles';
}

/** How a limit is known, in words. */
export function standingWords({ standing }: Source): string {
  return shortStanding(standing);
}
