import { TOUCH_TEMPERATURES, touchLimit, type TouchDuration } from '../../standards/touch-temperature.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known, type Standing } from '../../values/value.ts';
import type { ContactLimit, HotSpot } from './heat-figures.ts';

/** The limit for one material and contact time as a value that knows its source. */
export function touchLimitValue(
  material: HotSpot['material'],
  contact: TouchDuration,
): { readonly limit: Known<'temperature'>; readonly isRead: boolean } {
  const cell = touchLimit(material, contact);
  if (cell === null) return { limit: missing('no limit for this material'), isRead: false };
  return { limit: limitValue(cell.celsius, cell.standing, contact), isRead: cell.standing !== 'memory' };
}

function limitValue(celsius: number, standing: Standing, contact: TouchDuration): Known<'temperature'> {
  const source = { ...TOUCH_TEMPERATURES.source, standing };
  return {
    dimension: 'temperature',
    low: celsius,
    nominal: celsius,
    high: celsius,
    significant: 2,
    origin: { evidence: 'assumed', reason: `touched: ${contact}`, source },
  };
}

/** All four contact times for each material that was measured on the outside, the hottest place of that material beside them. */
export function contactLimits(spots: readonly HotSpot[], asked: TouchDuration): readonly ContactLimit[] {
  const outside = spots.filter((spot) => spot.isOutside && !spot.isReported && !isMissing(spot.measured));
  const materials = (['metal', 'plastic'] as const).filter((material) => outside.some((spot) => spot.material === material));
  return materials.flatMap((material) => {
    const hottest = hottestOf(outside.filter((spot) => spot.material === material));
    return TOUCH_TEMPERATURES.rows.map(({ duration }) => ({
      material,
      contact: duration,
      ...touchLimitValue(material, duration),
      isAsked: duration === asked,
      hottest,
    }));
  });
}

function hottestOf(spots: readonly HotSpot[]): Known<'temperature'> {
  return spots.reduce<Known<'temperature'>>((hottest, { measured }) => {
    if (isMissing(measured)) return hottest;
    return isMissing(hottest) || measured.nominal > hottest.nominal ? measured : hottest;
  }, missing('nothing measured on the outside'));
}
