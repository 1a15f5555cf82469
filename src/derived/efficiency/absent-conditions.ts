import type { EfficiencyPoint, Entry, PortLoad } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';

/**
 * Conditions of an efficiency that are not given, in words: line voltage (of a supply from the mains), load, place of measurement. A figure
 * without one of them is shown and not ranked. Common practice: what published tables of efficiency state.
 */
export function absentConditions(point: EfficiencyPoint, { nameplate }: Pick<Entry, 'nameplate'>): readonly string[] {
  const absent: string[] = [];
  if (nameplate.input?.kind === 'AC' && point.line === null) absent.push('line voltage');
  if (point.statistic === 'point' && point.load === null && point.current === null && !point.loads.some(isLoaded)) absent.push('load');
  if (point.place === null) absent.push('place of measurement');
  return absent;
}

function isLoaded({ current, power }: PortLoad): boolean {
  return current !== null || power !== null;
}

/** Why a figure is shown and not ranked: a condition that is not given, or a device that reported it of itself. Empty for one that is ranked. */
export function notRankedFor(point: EfficiencyPoint, entry: Pick<Entry, 'nameplate'>): readonly string[] {
  const isReported = methodClass(point.method, point.instrument) === 'reported';
  return [...absentConditions(point, entry), ...(isReported ? ['an instrument'] : [])];
}
