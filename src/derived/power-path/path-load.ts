import type { EfficiencyPoint, Entry, Fact, Port } from '../../entry/entry.ts';
import { electricPower } from '../../formulas/energy/electric-power.ts';
import { loadCurrent } from '../../formulas/energy/load-current.ts';
import { powerEfficiency } from '../../formulas/loss/power-efficiency.ts';
import type { OutputPoint } from '../../stages/models/stage-model.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import { sumOfPowers } from '../../formulas/energy/sum-of-powers.ts';
import { factValue } from '../fact-value.ts';
import { loadPoint, type LoadPoint } from '../load-point.ts';
import type { PathInput } from './path-input.ts';
import type { PathOutlet } from './power-path.ts';

/** An offer within this fraction of a power carries it: 20 V at 2.25 A is 45 W, and so is 20 V at 2.24 A. */
const CARRIES = 0.98;

/** The load that a path is drawn for; null where neither line nor output is known, so that no current follows. */
export function pathLoad(entry: Entry, { input, outlets, line, points }: PathInput): LoadPoint | null {
  if (line === null || isMissing(input)) return null;
  const outputs = new Map<string, OutputPoint>();
  for (const outlet of outlets) {
    const [port] = outlet.ports;
    const output = measuredOutput(outlet, points) ?? offeredOutput(entry, outlet);
    if (port !== undefined && output !== null) outputs.set(port, output);
  }
  const known = [...outputs.values()].map(({ power }) => power);
  if (known.length === 0) return null;
  const output = foldFormula(known, (first, second) => applyFormula(sumOfPowers, { first, second }), 'output power');
  return loadPoint(entry, { line: factValue(line), efficiency: applyFormula(powerEfficiency, { output, input }) }, outputs);
}

function measuredOutput({ ports, note }: PathOutlet, points: readonly EfficiencyPoint[]): OutputPoint | null {
  const [port, ...more] = ports;
  if (port === undefined || more.length > 0) return null;
  const found = points.flatMap((point) => [
    ...point.loads.filter((load) => load.port === port),
    ...(point.loads.length === 0 && (point.port === null || point.port === port) ? [point] : []),
  ]);
  const [first] = found.flatMap(({ measuredOutput: read, output: set, current }) => readOutput(read ?? set, current));
  return first === undefined ? null : { ...first, name: note ?? port };
}

function readOutput(volts: Fact<'voltage'> | null, amps: Fact<'current'> | null): readonly Omit<OutputPoint, 'name'>[] {
  if (volts === null || amps === null) return [];
  const at = { voltage: factValue(volts), current: factValue(amps) };
  return [{ ...at, power: applyFormula(electricPower, at) }];
}

/** A power whose voltage nobody measured: at the highest fixed offer that carries it, where the least current flows. */
function offeredOutput(entry: Entry, { ports, power }: PathOutlet): OutputPoint | null {
  if (isMissing(power)) return null;
  const volts = entry.ports.filter(({ id }) => ports.includes(id)).flatMap((port) => voltsThatCarry(port, power));
  if (volts.length === 0) return null;
  const voltage = assumedVoltage(ports, Math.max(...volts));
  return { voltage, current: applyFormula(loadCurrent, { power, voltage }), power, name: `${power.nominal.toFixed(1)} W` };
}

function voltsThatCarry({ offers }: Port, power: Value<'power'>): readonly number[] {
  return offers.flatMap((offer) =>
    (offer.kind === 'fixed' || offer.kind === 'plain') && offer.volts * offer.amps >= CARRIES * power.nominal ? [offer.volts] : [],
  );
}

function assumedVoltage(ports: readonly string[], volts: number): Known<'voltage'> {
  const reason = `voltage at ${ports.join(' and ')} not measured at this load; ${volts} V is the highest fixed offer that carries it, at a lower one more current flows`;
  const source = { title: 'The entry itself', section: ports.map((port) => `ports.${port}.offers`).join(', '), standing: 'read' } as const;
  return assume('voltage', volts, volts, volts, reason, source);
}
