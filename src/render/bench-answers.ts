import type { Derived } from '../derived/derived.ts';
import type { HotSpot } from '../derived/heat/heat-figures.ts';
import { sustainedWords } from '../derived/heat/sustained-words.ts';
import type { PowerBankFigures } from '../derived/power-bank/power-bank-figures.ts';
import { travelWords } from '../derived/power-bank/travel-words.ts';
import { sentence } from './words.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing, type Known } from '../values/value.ts';

/** What readers ask of the bench, each in one sentence: how hot, for how long, how many charges, on a plane or not. */
function benchAnswers({ heat, sustained, bank }: Pick<Derived, 'heat' | 'sustained' | 'bank'>): readonly string[] {
  return [
    ...hotSentence(heat.spots),
    ...(sustained.length === 0
      ? []
      : [`How long: ${sustained.map((run) => `${run.port === null ? '' : `${run.port} `}${sustainedWords(run)}`).join('; ')}.`]),
    ...(bank === null ? [] : [...chargesSentence(bank), travelWords(bank)]),
  ];
}

/** The same as a list; empty where the bench says nothing. */
export function benchAnswerList(derived: Pick<Derived, 'heat' | 'sustained' | 'bank'>): string {
  const items = benchAnswers(derived).map((answer) => `<li>${sentence(answer)}</li>`);
  return items.length === 0 ? '' : `<ul class="answers">${items.join('')}</ul>`;
}

/** The hottest place that can be touched, with its rise; without an air temperature it says that there is none, and why. */
function hotSentence(spots: readonly HotSpot[]): readonly string[] {
  const outside = spots.filter((spot) => spot.isOutside && !spot.isReported && !isMissing(spot.measured));
  const [hottest] = [...outside].sort((one, other) => nominal(other.measured) - nominal(one.measured));
  if (hottest === undefined) return [];
  const { place, measured, rise, ambient, conditions } = hottest;
  const over = isMissing(rise)
    ? 'no rise can be given, because the air temperature is not'
    : `${rise.nominal.toFixed(0)} K over the air of ${shown(ambient, '°C')}`;
  return [
    `How hot: ${shown(measured, '°C')} at the hottest place outside, ${place}; ${over}${conditions === null ? '' : ` (${conditions})`}.`,
  ];
}

/** Energy at the output is what a device's battery is filled from. */
function chargesSentence({ delivered, rated, stored }: PowerBankFigures): readonly string[] {
  const measured = delivered.find(({ energy }) => !isMissing(energy));
  const energy = measured?.energy ?? rated.energy;
  const ratio = measured?.ratio ?? rated.ratio;
  if (isMissing(energy)) return [];
  const at = measured === undefined ? rated.voltage : measured.output;
  const of = isMissing(ratio) || isMissing(stored) ? '' : `, ${(ratio.nominal * 100).toFixed(0)} % of ${shown(stored, 'Wh')} in the cells`;
  const out = `${shown(energy, 'Wh')} ${measured === undefined ? 'rated' : 'measured'} at the output${at === null ? '' : ` (${at})`}${of}`;
  return [`How many charges: ${out}; divide by the Wh of your device’s battery, and its own charger loses some.`];
}

function nominal(known: Known): number {
  return isMissing(known) ? Number.NEGATIVE_INFINITY : known.nominal;
}

function shown(known: Known, unit: string): string {
  if (isMissing(known)) return 'not known';
  const { number, unit: shownUnit } = formatInterval(known, known.dimension, unit);
  return `${number}\u00a0${shownUnit}`;
}
