import type { Entry, MeasuredPoint } from '../../entry/entry.ts';
import { TOUCH_TEMPERATURES, touchLimit } from '../../standards/touch-temperature.ts';
import { readQuantity } from '../../units/read-quantity.ts';
import { valueOf } from '../../values/from-quantity.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known, type Standing } from '../../values/value.ts';
import { factValue, isOf } from '../fact-value.ts';
import { verdictOf } from '../mains/x-discharge.ts';
import { isMetal } from './case-material.ts';
import type { HotSpot } from './heat-figures.ts';

/** A place that somebody can touch. */
const OUTSIDE = /\b(?:case|sleeve|shell|housing|enclosure|outside|surface|lid|top|bottom)\b/iu;

/** How long a charger is touched: picked up or unplugged. */
const TOUCHED = 'up to ten seconds';

/** Every measured temperature; those on the case beside the limit for touching it for up to ten seconds. */
export function hotSpots(entry: Entry): readonly HotSpot[] {
  const material = isMetal(entry) ? 'metal' : 'plastic';
  return entry.measurements.flatMap((point, index) => (point.subject === 'thermal' ? [spotOf(point, index, material)] : []));
}

function spotOf(point: MeasuredPoint, index: number, material: 'plastic' | 'metal'): HotSpot {
  const { value } = point;
  const measured = isOf(value, 'temperature') ? factValue(value, { bound: 'use' }) : missing('not a temperature');
  const place = point.place ?? 'place not given';
  const isOutside = OUTSIDE.test(place);
  const cell = touchLimit(material, TOUCHED);
  const limit = isOutside && cell !== null ? limitValue(cell.celsius, cell.standing) : missing('not a place to touch');
  return {
    index,
    place,
    measured,
    ambient: ambientOf(point),
    isOutside,
    material,
    limit,
    limitIsRead: cell !== null && cell.standing !== 'memory',
    verdict: isOutside ? verdictOf(measured, limit) : 'not asked',
  };
}

function limitValue(celsius: number, standing: Standing): Known<'temperature'> {
  const source = { ...TOUCH_TEMPERATURES.source, standing };
  return {
    dimension: 'temperature',
    low: celsius,
    nominal: celsius,
    high: celsius,
    significant: 2,
    origin: { evidence: 'assumed', reason: `touched ${TOUCHED}`, source },
  };
}

function ambientOf(point: MeasuredPoint): Known<'temperature'> {
  const written = point.conditions['ambient'];
  if (written === undefined) return missing('air temperature not given', ['ambient']);
  const reading = readQuantity(written, 'temperature');
  if (!reading.ok) return missing(`air temperature not readable: ${written}`, ['ambient']);
  const value = valueOf({ quantity: reading.value, evidence: 'measured' }, [...point.path, 'ambient'].join('.'));
  return isMissing(value) ? missing(`air temperature not readable: ${written}`, ['ambient']) : value;
}
