import type { HeatLimit } from '../derived/heat/heat-figures.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { TOUCH_TEMPERATURES } from '../standards/touch-temperature.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'surface-too-hot',
  title: 'A surface that one touches is hotter than the limit',
  severity: 'warning',
  why: 'Whoever pulls the plug at full load holds this surface for seconds.',
  advice:
    'State where and how it was measured, with the air temperature; where it is right, answer the finding: it is then a result of the review.',
  source: TOUCH_TEMPERATURES.source,
};

export const surfaceTooHot: Check = { ...RULE, check };

/** A limit that was read gives a warning; one from memory is only noted. */
function check({ entry, derived }: CheckInput): Finding[] {
  return derived.heat.spots.flatMap((spot) => {
    const { measured, limit, verdict, place, material } = spot;
    const point = entry.measurements[spot.index];
    if (verdict !== 'over' || spot.limitOf.of !== 'touch' || point === undefined || isMissing(measured) || isMissing(limit)) return [];
    const message = `${place}: ${rounded(measured.nominal)} °C, above ${rounded(limit.nominal)} °C for ${material} touched ${spot.limitOf.contact}.`;
    return [findingOf(RULE, atValue(...point.value.path), { message, subject: place, ...standing(spot.limitOf) })];
  });
}

function standing({ isRead }: Extract<HeatLimit, { of: 'touch' }>): Pick<Parameters<typeof findingOf>[2], 'source' | 'severity'> {
  const source = { ...TOUCH_TEMPERATURES.source, standing: isRead ? TOUCH_TEMPERATURES.source.standing : ('memory' as const) };
  return { source, severity: isRead ? 'warning' : 'note' };
}
