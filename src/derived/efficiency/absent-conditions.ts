import type { EfficiencyPoint, Entry } from '../../entry/entry.ts';

/**
 * Conditions of an efficiency that are not given, in words: line voltage (of a supply from the mains), load, place of measurement. A figure
 * without one of them is shown and not ranked. Common practice: what published tables of efficiency state.
 */
export function absentConditions(point: EfficiencyPoint, { nameplate }: Pick<Entry, 'nameplate'>): readonly string[] {
  const absent: string[] = [];
  if (nameplate.input?.kind === 'AC' && point.line === null) absent.push('line voltage');
  if (point.statistic === 'point' && point.load === null && point.current === null) absent.push('load');
  if (point.place === null) absent.push('place of measurement');
  return absent;
}
