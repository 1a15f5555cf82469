import type { Finding } from '../diagnostics/finding.ts';
import type { RatioOrigin, StatedRatio, WindingFigures } from '../derived/windings/winding-figures.ts';
import { isMissing, type Value } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'turns-ratio-agrees',
  title: 'Turns and turns ratio disagree',
  severity: 'warning',
  why: 'Reflected voltage, reverse voltage and gain all follow from the ratio; the page computes with the turns, else with the stated ratio, else with the reflected voltage.',
  advice: 'Count or measure again and correct the one that is wrong; primary comes first in both.',
  source: commonPractice(
    'a stated ratio agrees within its last digit and 1 %, winding voltages within 3 % (25 % upwards where leakage is the resonant inductance), a reflected voltage within 15 %',
  ),
};

export const turnsRatioAgrees: Check = { ...RULE, check };

function check({ derived }: CheckInput): Finding[] {
  return derived.windings.flatMap((figures) => figures.stated.slice(1).flatMap((other) => judged(figures, other)));
}

function judged({ stage, stated }: WindingFigures, other: StatedRatio): Finding[] {
  const [used] = stated;
  if (used === undefined || isMissing(used.value) || isMissing(other.value)) return [];
  const room = { below: used.room.below + other.room.below, above: used.room.above + other.room.above };
  if (isNear(other.value.nominal, used.value.nominal, room)) return [];
  const guess = meant(used, other.value, room);
  const message = `${stage}: ${named(used)} ${verb(used.from)} ${plain(used.value)} to 1, ${named(other)} ${verb(other.from)} ${plain(other.value)} to 1${guess ?? '.'} Computed with ${WORDS[used.from]}.`;
  return [findingOf(RULE, atValue(...other.path), { message, subject: stage })];
}

const WORDS: Readonly<Record<RatioOrigin, string>> = {
  turns: 'the turns',
  transformer: 'the turns on the transformer',
  ratio: 'the turns ratio',
  'winding voltages': 'the winding voltages',
  'reflected voltage': 'the reflected voltage',
};

function named({ from, written }: StatedRatio): string {
  return `${WORDS[from]} ${written}`;
}

function verb(from: RatioOrigin): string {
  return from === 'ratio' || from === 'reflected voltage' ? 'is' : 'are';
}

function plain({ nominal }: Value): string {
  return rounded(nominal);
}

type Room = StatedRatio['room'];

function isNear(one: number, other: number, { below, above }: Room): boolean {
  return one >= other * (1 - below) && one <= other * (1 + above);
}

/** What slip explains the difference: upside down, another winding, both halves of a centre tap. */
function meant({ value, windings }: StatedRatio, other: Value, room: Room): string | null {
  const { nominal } = other;
  if (!isMissing(value) && isNear(1 / nominal, value.nominal, room)) return `, the inverse. Did you mean ${rounded(1 / nominal)} to 1?`;
  const [primary, first, second] = windings;
  if (primary === undefined || first === undefined) return null;
  const third = windings.slice(2).find((turns) => isNear(nominal, primary / turns, room));
  if (third !== undefined) return `, which is the ratio to the winding of ${String(third)} turns.`;
  const both = second === first ? primary / (first + second) : Number.NaN;
  return isNear(nominal, both, room) ? ', which is the ratio to both halves of the centre tap together.' : null;
}
