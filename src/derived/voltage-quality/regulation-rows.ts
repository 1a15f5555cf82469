import type { Entry } from '../../entry/entry.ts';
import { lineRegulation } from '../../formulas/measurement/line-regulation.ts';
import { loadRegulation } from '../../formulas/measurement/load-regulation.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { apartFromGain, voltageReadings, type VoltageReading } from './voltage-readings.ts';

/** How far one voltage goes from one load to another, or from one line voltage to another. */
export interface RegulationRow {
  readonly what: 'load' | 'line';
  readonly port: string | null;
  readonly place: VoltageReading['place'];
  readonly set: Known<'voltage'>;
  /** What both readings share: "230 V line", "at 5 A". */
  readonly at: string | null;
  /** Lowest load, or the higher line; then highest load, or the lower line. */
  readonly first: { readonly words: string; readonly value: Known<'voltage'> };
  readonly second: { readonly words: string; readonly value: Known<'voltage'> };
  readonly regulation: Known<'ratio'>;
}

/** From here a load counts as full, and up to here two loads count as the same, as shares. */
const FULL = 0.97;
const SAME_LOAD = 0.02;

/**
 * Load regulation of every port, setting, line and place with two loads or more, from the lowest to the highest that was measured; then line
 * regulation wherever the same load was measured at two lines. Readings with other ports loaded beside are left out, and those
 * at the end of a cable, whose fall is that of the cable.
 */
export function regulationRows(entry: Entry): readonly RegulationRow[] {
  const readings = voltageReadings(entry).filter(
    ({ isShared, place, share, value }) => !isShared && place !== 'cable end' && share !== null && !isMissing(value),
  );
  const loads = grouped(readings, ({ line }) => String(line)).flatMap(loadRow);
  const lines = grouped(readings, () => '').flatMap(lineRow);
  return [...loads, ...lines];
}

function grouped(readings: readonly VoltageReading[], more: (reading: VoltageReading) => string): readonly (readonly VoltageReading[])[] {
  const groups = Map.groupBy(readings, (reading) => {
    const { port, place, set } = reading;
    return [port, place, isMissing(set) ? '' : set.nominal, more(reading)].map(String).join('|');
  });
  return [...groups.values()];
}

function shareOf({ share }: VoltageReading): number {
  return share ?? 0;
}

function loadRow(readings: readonly VoltageReading[]): readonly RegulationRow[] {
  const sorted = [...readings].sort((one, other) => shareOf(one) - shareOf(other));
  const [lowest, highest] = [sorted[0], sorted.findLast((reading) => shareOf(reading) <= 1 + SAME_LOAD)];
  // A run of heavy loads alone says nothing of regulation over the load.
  if (lowest === undefined || highest === undefined || shareOf(highest) - shareOf(lowest) < 0.5) return [];
  const [unloaded, loaded] = apartFromGain(lowest, highest);
  return [
    {
      ...{ what: 'load', port: lowest.port, place: lowest.place, set: lowest.set },
      at: lowest.line === null ? null : `${String(lowest.line)} V line`,
      first: { words: loadWords(lowest), value: lowest.value },
      second: { words: loadWords(highest), value: highest.value },
      regulation: applyFormula(loadRegulation, { unloaded, loaded }),
    },
  ];
}

/** The heaviest load that was measured at the highest and at the lowest line. */
function lineRow(readings: readonly VoltageReading[]): readonly RegulationRow[] {
  const lines = [...new Set(readings.flatMap(({ line }) => line ?? []))].sort((one, other) => other - one);
  const [high, low] = [lines[0], lines.at(-1)];
  if (high === undefined || low === undefined || high === low) return [];
  const pairs = readings
    .filter(({ line }) => line === high)
    .flatMap((first) => {
      const second = readings.find((one) => one.line === low && Math.abs(shareOf(one) - shareOf(first)) <= SAME_LOAD);
      return second === undefined ? [] : [{ first, second }];
    })
    .sort((one, other) => shareOf(other.first) - shareOf(one.first));
  const [pair] = pairs;
  if (pair === undefined) return [];
  const { first, second } = pair;
  const [higher, lower] = apartFromGain(first, second);
  return [
    {
      ...{ what: 'line', port: first.port, place: first.place, set: first.set },
      at: `at ${loadWords(first)}`,
      first: { words: `${String(high)} V line`, value: first.value },
      second: { words: `${String(low)} V line`, value: second.value },
      regulation: applyFormula(lineRegulation, { high: higher, low: lower }),
    },
  ];
}

/** "0.5 A", "no load", or the share where the current is not written. */
function loadWords({ current, share }: VoltageReading): string {
  if (share !== null && share <= 0) return 'no load';
  if (!isMissing(current))
    return current.origin.evidence === 'computed' || current.origin.evidence === 'assumed' ? '' : current.origin.written;
  return share === null ? 'load not given' : share >= FULL ? 'full load' : `${String(Math.round(share * 100))} %`;
}
