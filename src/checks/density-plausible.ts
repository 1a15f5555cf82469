import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { CM3_PER_IN3 } from '../units/cubic-inch.ts';

const RULE: Rule = {
  id: 'density-plausible',
  title: 'The power density cannot be right',
  severity: 'warning',
  why: 'The densest published adapters reach 2 W/cm³; a value far above comes from a wrong unit of length or a digit too few.',
  advice: 'Compare the size with the calipers, and its unit: mm, cm or in.',
  source: {
    title: 'Silanna RD-29 65 W USB PD report, doc 11100 v1.0',
    section: '29.8 W/in³ (1.82 W/cm³); the limit of 5 W/cm³ is common practice',
    standing: 'read',
  },
};

export const densityPlausible: Check = { ...RULE, check };

const MOST_WATTS_PER_CM3 = 5;
/** A wall charger of 20 W in a litre: nobody builds it; inches read as centimetres give 1/16 at most. */
const LEAST_WATTS_PER_CM3 = 0.02;

function check({ entry, derived }: CheckInput): Finding[] {
  const place = entry.body.volume?.path ?? entry.body.size?.path;
  const { density } = derived.size;
  if (place === undefined || isMissing(density)) return [];
  const perCm3 = density.nominal / 1e6;
  if (perCm3 <= MOST_WATTS_PER_CM3 && perCm3 >= LEAST_WATTS_PER_CM3) return [];
  const low = perCm3 < LEAST_WATTS_PER_CM3;
  const hint = low
    ? 'Is the size in mm and written as cm?'
    : 'Is the size in inches and written as cm, or the volume in in³ and written as cm³?';
  const message = `${rounded(perCm3)} W/cm³ (${rounded(perCm3 * CM3_PER_IN3)} W/in³), ${derived.size.basis}, is ${low ? 'below' : 'above'} what adapters reach. ${hint}`;
  return [findingOf(RULE, atValue(...place), { message, subject: 'size' })];
}
