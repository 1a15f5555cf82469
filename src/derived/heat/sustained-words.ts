import { formatInterval } from '../../units/format.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { NOT_SHOWN, type SustainedRun } from './sustained-run.ts';

/** "100 W peak, 65 W sustained, drop at 12 min, ambient 25 °C"; what was not shown or not given says so. */
export function sustainedWords({ peak, sustained, droppedAfter, ambient }: SustainedRun): string {
  const said = [
    isMissing(peak) ? null : `${shown(peak, 'W')} peak`,
    isMissing(sustained) ? NOT_SHOWN : `${shown(sustained, 'W')} sustained`,
    isMissing(droppedAfter) ? 'no drop' : `drop at ${shown(droppedAfter, 'min')}`,
    isMissing(ambient) ? 'ambient not given' : `ambient ${shown(ambient, '°C')}`,
  ];
  return said.filter((words) => words !== null).join(', ');
}

function shown(known: Known, unit: string): string {
  if (isMissing(known)) return known.reason;
  const { number, unit: shownUnit } = formatInterval(known, known.dimension, unit);
  return `${number} ${shownUnit}`;
}
