import type { Entry, MeasuredPoint, Part } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import { temperatureRise } from '../../formulas/thermal/temperature-rise.ts';
import type { TouchDuration } from '../../standards/touch-temperature.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { conditionValue } from '../condition-value.ts';
import { edgeValue, factValue, isOf } from '../fact-value.ts';
import { isFitted } from '../fitted-parts.ts';
import { quantitiesOf } from '../part-rating.ts';
import { verdictOf } from '../mains/x-discharge.ts';
import { emissivityDoubt } from './bare-metal.ts';
import { touchedMaterial } from './case-material.ts';
import { touchLimitValue } from './contact-limits.ts';
import type { HeatLimit, HotSpot } from './heat-figures.ts';
import { partAtPlace } from './part-at-place.ts';
import { contactOf } from './touch-contact.ts';

/** A place that somebody can touch. */
const OUTSIDE = /\b(?:case|sleeve|shell|housing|enclosure|outside|surface|lid|top|bottom|band)\b/iu;

/** Every measured temperature with its rise; those on the case beside the limit for touching, those on a part beside its rating. */
export function hotSpots(entry: Entry): readonly HotSpot[] {
  return entry.measurements.flatMap((point, index) => (point.subject === 'thermal' ? [spotOf(entry, point, index)] : []));
}

function spotOf(entry: Entry, point: MeasuredPoint, index: number): HotSpot {
  const { value } = point;
  const measured = isOf(value, 'temperature') ? factValue(value, { bound: 'use' }) : missing('not a temperature');
  const ambient = conditionValue(point, 'ambient', 'temperature', 'air temperature');
  const place = point.place ?? 'place not given';
  const part = partAtPlace(entry.parts.filter(isFitted), place);
  const isOutside = part === null && OUTSIDE.test(place);
  const material = touchedMaterial(entry, place);
  const { limit, limitOf } = isOutside ? touching(material, contactOf(entry)) : ofPart(part);
  const isReported = methodClass(point.method, point.instrument) === 'reported';
  return {
    index,
    place,
    measured,
    ambient,
    rise: applyFormula(temperatureRise, { temperature: measured, ambient }),
    conditions: conditionsOf(point),
    isOutside,
    material,
    limit,
    limitOf,
    verdict: limitOf.of === 'nothing' || isReported ? 'not asked' : verdictOf(measured, limit),
    isReported,
    emissivity: emissivityDoubt(point, { isMetalCase: isOutside && material === 'metal', part }, entry.instruments),
  };
}

type Limited = Pick<HotSpot, 'limit' | 'limitOf'>;

function touching(material: HotSpot['material'], contact: TouchDuration): Limited {
  const { limit, isRead } = touchLimitValue(material, contact);
  return { limit, limitOf: { of: 'touch', contact, isRead } };
}

/** The temperature that a part is rated for, where its rating says one: the upper end of a range. */
function ofPart(part: Part | null): Limited {
  const nothing: HeatLimit = { of: 'nothing' };
  if (part === null) return { limit: missing('not a place to touch, and no part by that name'), limitOf: nothing };
  const names = part.references.join(', ');
  const [rated] = quantitiesOf(part, 'temperature');
  if (rated === undefined) {
    return { limit: missing(`${names}: rated temperature not known`, [`temperature rating of ${names}`]), limitOf: nothing };
  }
  const limit = edgeValue({ quantity: rated, evidence: part.evidence }, 'high', part.path.join('.'));
  return { limit, limitOf: { of: 'part', references: part.references } };
}

function conditionsOf({ conditions }: MeasuredPoint): string | null {
  const { line, output, load, after } = {
    line: conditions['line'],
    output: conditions['output'],
    load: conditions['load'],
    after: conditions['after'],
  };
  const said = [line, output, load, after === undefined ? undefined : `after ${after}`].filter((words) => words !== undefined);
  return said.length === 0 ? null : said.join(', ');
}
