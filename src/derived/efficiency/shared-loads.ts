import type { Entry, Port } from '../../entry/entry.ts';
import { electricPower } from '../../formulas/energy/electric-power.ts';
import { sumOfPowers } from '../../formulas/energy/sum-of-powers.ts';
import { loadDerating } from '../../formulas/loss/load-derating.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import { offeredPoints } from '../offered-points.ts';
import type { FullLoads, RunPort } from './efficiency-figures.ts';

/** How far a voltage may lie from the one of an offer, as a share of it. */
const NEAR_VOLTS = 0.02;

/** A port of a run at the voltage that was set there, with what it is rated for at that voltage. */
export function runPort({ ports }: Pick<Entry, 'ports'>, id: string, setting: number | null): RunPort {
  const port = ports.find((candidate) => candidate.id === id) ?? null;
  const rated = port === null || setting === null ? null : ratedAt(port, setting);
  return { id, port, setting, rated, fullAmps: rated === null || isMissing(rated.current) ? null : rated.current.nominal };
}

/** What a port offers at a voltage, within 2 %; the most current where several offers do. */
function ratedAt(port: Port, volts: number): RunPort['rated'] {
  const fitting = offeredPoints(port).flatMap(({ voltage, current }) =>
    !isMissing(voltage) && !isMissing(current) && Math.abs(voltage.nominal - volts) <= NEAR_VOLTS * volts ? [{ voltage, current }] : [],
  );
  return fitting.reduce<(typeof fitting)[number] | null>(
    (most, one) => (most === null || one.current.nominal > most.current.nominal ? one : most),
    null,
  );
}

/**
 * Loads of a test of several ports at once: what each is rated for at its setting, all made smaller by the same factor where together
 * they would be above the rated power of the supply; null where the rating of one of them is not known.
 *
 * @param most what a port counts with at most in the factor; its load is what it is rated for all the same
 */
export function fullLoads(ports: readonly RunPort[], total: Known<'power'>, most: Value<'power'> | null = null): FullLoads | null {
  const powers = ports.flatMap(({ rated }) => {
    const power = rated === null ? null : applyFormula(electricPower, { voltage: rated.voltage, current: rated.current });
    if (power === null) return [];
    return [most !== null && !isMissing(power) && power.nominal > most.nominal ? most : power];
  });
  if (powers.length < ports.length || powers.length === 0) return null;
  const sum = foldFormula<'power'>(powers, (first, second) => applyFormula(sumOfPowers, { first, second }), 'rated power of a port');
  const derating = applyFormula(loadDerating, { total, sum });
  if (isMissing(derating)) return null;
  const factor = Math.min(1, derating.nominal);
  return { derating, amps: ports.map(({ fullAmps }) => (fullAmps ?? 0) * factor) };
}
