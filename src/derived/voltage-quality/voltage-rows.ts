import type { Entry, Fact, MeasuredPoint } from '../../entry/entry.ts';
import { highestSourceVoltage } from '../../formulas/cable/highest-source-voltage.ts';
import { lowestCableEndVoltage } from '../../formulas/cable/lowest-cable-end-voltage.ts';
import { lowestSourceVoltage } from '../../formulas/cable/lowest-source-voltage.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { conditionValue } from '../condition-value.ts';
import { isOf, factValue } from '../fact-value.ts';
import { placeOf, voltageReadings } from './voltage-readings.ts';

type BandVerdict = 'meets' | 'misses' | 'undecided';

/** One voltage, or the lowest and highest of a run, against the band of its port. */
export interface VoltageRow {
  readonly what: 'under load' | 'ripple and noise' | 'on plug-in';
  readonly port: string | null;
  readonly place: 'board' | 'connector' | 'cable end' | null;
  readonly set: Known<'voltage'>;
  readonly lowest: Known<'voltage'>;
  readonly highest: Known<'voltage'>;
  /** Band that it is held against; null where none applies. */
  readonly band: { readonly low: Known<'voltage'>; readonly high: Known<'voltage'> } | null;
  /** Why there is no verdict, where there is none. */
  readonly verdict: BandVerdict | { readonly none: string };
  /** "PPS" where only an adjustable offer covers the setting. */
  readonly offer: 'fixed' | 'PPS or AVS' | null;
  /** "20 MHz", "at 3 A". */
  readonly conditions: string | null;
}

type Reading = Omit<VoltageRow, 'lowest' | 'highest' | 'band' | 'verdict' | 'offer'> & { readonly value: Known<'voltage'> };

/** Voltages under load, ripple and droop of an entry, in this order; runs of one port, setting and place are one row. */
export function voltageRows(entry: Entry): readonly VoltageRow[] {
  const loaded = voltageReadings(entry).map(({ port, place, set, value, conditions }) => ({
    what: 'under load' as const,
    ...{ port, place, set, value, conditions },
  }));
  const groups = Map.groupBy(loaded, ({ port, place, set }) => [port, place, isMissing(set) ? '' : set.nominal].map(String).join('|'));
  const runs = [...groups.values()].flatMap((readings) => judged(entry, readings));
  const plugged = of(entry, 'droop', 'on plug-in').flatMap((reading) => judged(entry, [reading]));
  const ripple = of(entry, 'ripple', 'ripple and noise').map((reading) => unjudged(reading, 'no published limit'));
  return [...runs, ...ripple, ...plugged];
}

function of(entry: Entry, subject: MeasuredPoint['subject'], what: VoltageRow['what']): readonly Reading[] {
  return entry.measurements.flatMap((point): readonly Reading[] => {
    const { value, conditions } = point;
    if (point.subject !== subject || !isVoltage(value)) return [];
    const said = (['bandwidth', 'load', 'line'] as const).flatMap((key) => conditions[key] ?? []);
    return [
      {
        what,
        port: conditions['port'] ?? null,
        place: placeOf(conditions['at']),
        set: conditionValue(point, 'output', 'voltage', 'set voltage'),
        value: factValue(value),
        conditions: said.length === 0 ? null : said.join(', '),
      },
    ];
  });
}

function isVoltage(fact: Fact): fact is Fact<'voltage'> {
  return isOf(fact, 'voltage');
}

function judged(entry: Entry, readings: readonly Reading[]): readonly VoltageRow[] {
  const [first] = readings;
  if (first === undefined) return [];
  const { what, port, place, set, conditions } = first;
  const row = { what, port, place, set, conditions };
  const values = readings.map(({ value }) => value);
  const by = (least: boolean): Known<'voltage'> =>
    values.reduce((one, other) =>
      isMissing(other) ? one : isMissing(one) || (least ? other.low < one.low : other.high > one.high) ? other : one,
    );
  const [lowest, highest] = [by(true), by(false)];
  const reason = unaskedReason(entry, first);
  if (reason !== null) return [{ ...row, lowest, highest, band: null, verdict: { none: reason }, offer: null }];
  const lower = first.place === 'cable end' ? lowestCableEndVoltage : lowestSourceVoltage;
  const band = { low: applyFormula(lower, { voltage: first.set }), high: applyFormula(highestSourceVoltage, { voltage: first.set }) };
  const verdict = bandVerdict(lowest, highest, band, first);
  return [{ ...row, lowest, highest, band, verdict, offer: offerOf(entry, first) }];
}

function unjudged({ value, ...row }: Reading, none: string): VoltageRow {
  return { ...row, lowest: missing('a single figure', []), highest: value, band: null, verdict: { none }, offer: null };
}

/** The band is that of a USB port, at its receptacle or at the end of a cable. */
function unaskedReason({ ports }: Entry, { port, place }: Reading): string | null {
  const connectors = ports
    .filter(({ id, direction }) => (port === null ? direction !== 'input' : port.split(' + ').includes(id)))
    .map(({ connector }) => connector);
  if (connectors.length === 0 || connectors.some((connector) => connector === 'barrel' || connector === 'wireless'))
    return 'the band is that of USB ports';
  if (place === null) return 'not said where it was measured';
  return place === 'board' ? 'measured on the board' : null;
}

/** A moment outside the band at rest is allowed some 0.5 V by the standard, from memory: so far it is undecided. */
const MOMENT_VOLTS = 0.5;

function bandVerdict(
  lowest: Known<'voltage'>,
  highest: Known<'voltage'>,
  { low, high }: NonNullable<VoltageRow['band']>,
  { what }: Reading,
): VoltageRow['verdict'] {
  if (isMissing(lowest) || isMissing(highest)) return { none: isMissing(lowest) ? lowest.reason : 'not known' };
  if (isMissing(low) || isMissing(high)) return { none: isMissing(low) ? low.reason : 'not known' };
  const slack = 1e-9;
  if (lowest.low >= low.nominal - slack && highest.high <= high.nominal + slack) return 'meets';
  const moment = what === 'on plug-in' ? MOMENT_VOLTS : 0;
  return lowest.high < low.nominal - moment - slack || highest.low > high.nominal + moment + slack ? 'misses' : 'undecided';
}

function offerOf({ ports }: Entry, { port, set }: Reading): VoltageRow['offer'] {
  if (isMissing(set)) return null;
  const offers = ports.filter(({ id }) => port === null || id === port).flatMap((each) => each.offers);
  const isFixed = offers.some((offer) => offer.kind === 'fixed' && Math.abs(offer.volts - set.nominal) < 1e-6);
  return isFixed ? 'fixed' : offers.some(({ kind }) => kind === 'PPS' || kind === 'SPR AVS' || kind === 'EPR AVS') ? 'PPS or AVS' : null;
}
