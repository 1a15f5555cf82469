import { altitudeFactor } from './altitude.ts';
import { impulseClearance, recurringClearance, type PollutionDegree } from './clearance.ts';
import { basicCreepage, type MaterialGroup } from './creepage.ts';
import { ratedImpulse, reinforcedImpulse, type OvervoltageCategory } from './rated-impulse.ts';

/** What insulation is for: only function, basic protection, or reinforced protection between mains and user. */
export type InsulationKind = 'functional' | 'basic' | 'reinforced';

/** Where insulation stands and what stands across it. */
export interface InsulationCase {
  readonly kind: InsulationKind;
  /** Working voltage across it, V rms. */
  readonly workingRms: number;
  /** Highest recurring peak across it, V. */
  readonly workingPeak: number;
  /** Mains from line to neutral, V rms; null where no mains transient reaches the insulation. */
  readonly lineToNeutral: number | null;
  readonly overvoltage: OvervoltageCategory;
  readonly pollution: PollutionDegree;
  readonly material: MaterialGroup;
  readonly onBoard: boolean;
  /** Altitude, m. */
  readonly altitude: number;
}

/** Distances of IEC 60664-1 for one case, mm; null with the reason where the tables do not reach. */
export interface RequiredDistances {
  readonly clearance: number | null;
  readonly creepage: number | null;
  /** Impulse that the clearance was read for, V; null without mains. */
  readonly impulse: number | null;
  /** Which of the two voltages decides the clearance. */
  readonly decidedBy: 'impulse' | 'recurring peak' | null;
  /** Why a distance is not given; empty where both are. */
  readonly missing: readonly string[];
}

/**
 * Distances by working voltage, pollution, material, altitude and kind of insulation. Reinforced: the next preferred impulse,
 * 160 % of the recurring peak, twice the creepage. Creepage is never less than the clearance. An indication, never a verdict.
 */
export function requiredDistances(given: InsulationCase): RequiredDistances {
  const impulse = impulseOf(given);
  const isBeyondMains = given.lineToNeutral !== null && impulse === null;
  const transient = isBeyondMains ? null : impulse === null ? 0 : impulseClearance(impulse, given.pollution);
  const recurring = recurringClearance((given.kind === 'reinforced' ? 1.6 : 1) * given.workingPeak);
  const factor = altitudeFactor(given.altitude);
  const isKnown = transient !== null && recurring !== null && factor !== null;
  const clearance = isKnown ? Math.max(transient, recurring) * factor : null;
  const creepage = creepageOf(given);
  return {
    clearance,
    creepage: creepage === null ? null : Math.max(creepage, clearance ?? 0),
    impulse,
    decidedBy: transient === null || recurring === null ? null : transient >= recurring ? 'impulse' : 'recurring peak',
    missing: [
      ...(clearance === null ? ['mains voltage, peak or altitude lies above the tables of clearance'] : []),
      ...(creepage === null ? [creepageGap(given)] : []),
    ],
  };
}

function impulseOf({ kind, lineToNeutral, overvoltage }: InsulationCase): number | null {
  const impulse = lineToNeutral === null ? null : ratedImpulse(lineToNeutral, overvoltage);
  return impulse !== null && kind === 'reinforced' ? reinforcedImpulse(impulse) : impulse;
}

function creepageOf({ kind, workingRms, pollution, material, onBoard }: InsulationCase): number | null {
  const basic = pollution === 2 ? basicCreepage(workingRms, material, onBoard && kind !== 'reinforced') : null;
  return basic === null ? null : kind === 'reinforced' ? 2 * basic : basic;
}

function creepageGap({ pollution, material, onBoard }: InsulationCase): string {
  if (pollution !== 2) return 'creepage was read for pollution degree 2 only';
  if (onBoard && material === 'IIIb') return 'no creepage for printed wiring on material group IIIb';
  return 'working voltage lies above the table of creepage';
}
