import type { MeasuredPoint, Part } from '../../entry/entry.ts';

/** Words of a method or an instrument that sees radiation and not the temperature itself. */
const SEES_RADIATION = /\b(?:thermal (?:camera|imag\w*)|thermograph\w*|infra-?red|IR|camera|pyrometer|imager)\b/iu;

/** Words of a place that is metal, and of a covering that makes it as good as plastic to a camera. */
const METAL = /\b(?:alumini?um|copper|steel|brass|zinc|tin(?:ned)?|metal|heat ?sink|shield|USB(?:-[AC])? shell|nickel)\b/iu;
const COVERED = /\b(?:paint\w*|tape\w*|anodi[sz]ed|lacquer\w*|dot|sticker|kapton|polyimide|black\w*|coated)\b/iu;

/** Roles of parts that are bare metal on the outside, as a rule. */
const METAL_ROLES: readonly string[] = ['heat-spreader', 'connector'];

/** From here up an emissivity is that of paint, plastic or tape. */
const OF_PLASTIC = 0.8;

/** What is wrong with a reading of bare metal by its radiation. */
export type EmissivityDoubt = 'not given' | 'of plastic';

/** Whether a temperature was read by radiation from bare metal, and what its emissivity says; null where nothing is in doubt. */
export function emissivityDoubt(
  point: MeasuredPoint,
  surface: { readonly isMetalCase: boolean; readonly part: Part | null },
  instruments: Readonly<Record<string, string>>,
): EmissivityDoubt | null {
  const how = [point.method, point.instrument, point.instrument === null ? null : (instruments[point.instrument] ?? null)];
  if (!how.some((words) => words !== null && SEES_RADIATION.test(words))) return null;
  const said = [point.place, point.note, point.method].filter((words) => words !== null).join(' ');
  const isMetal = METAL.test(point.place ?? '') || surface.isMetalCase || METAL_ROLES.includes(surface.part?.role ?? '');
  if (!isMetal || COVERED.test(said)) return null;
  // Words such as "as set" are no number, and one in per cent is taken as such.
  const [, number, percent] = /(\d+(?:[.,]\d+)?)\s*(%?)/u.exec(point.conditions['emissivity'] ?? '') ?? [];
  if (number === undefined) return 'not given';
  return Number(number.replace(',', '.')) / (percent === '%' ? 100 : 1) >= OF_PLASTIC ? 'of plastic' : null;
}
