import type { EfficiencyPoint } from '../entry/entry.ts';

/**
 * The efficiency of the whole device that stands for it: a stated mean, else the point with the most power, at 230 V where it was
 * measured there; null where none is known.
 */
export function tellingEfficiency(points: readonly EfficiencyPoint[]): EfficiencyPoint | null {
  const known = points.filter((point) => point.efficiency !== null && point.of === null);
  const means = known.filter((point) => point.statistic === 'average');
  return preferring230(means)[0] ?? [...preferring230(known)].sort((one, other) => inputPower(other) - inputPower(one))[0] ?? null;
}

function preferring230(points: readonly EfficiencyPoint[]): readonly EfficiencyPoint[] {
  return points.some(isAt230) ? points.filter(isAt230) : points;
}

function isAt230(point: EfficiencyPoint): boolean {
  return point.line?.quantity.nominal === 230;
}

function inputPower(point: EfficiencyPoint): number {
  return point.input?.quantity.nominal ?? 0;
}
