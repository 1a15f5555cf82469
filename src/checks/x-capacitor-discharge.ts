import { fittedParts } from '../derived/fitted-parts.ts';
import type { MainsFigures } from '../derived/mains/mains-figures.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'x-capacitor-discharge',
  title: 'The plug pins may keep their charge',
  severity: 'warning',
  why: 'X capacitors hold the crest of the mains; without a way down the pins give a shock after unplugging. An indication, no compliance verdict.',
  advice: 'Look for a bleed resistor or a discharge IC across the line and add it; measure the pins after unplugging.',
  source: {
    title: 'IEC 62368-1, 5.5.2.2',
    section: '2 s after unplugging; 60 V from 300 nF up, more for smaller capacitances',
    standing: 'secondary',
  },
};

export const xCapacitorDischarge: Check = { ...RULE, check };

/** Below this no rule asks anything; as quoted for IEC 60950-1 and IEC 60335-1. */
const ASKED_ABOVE = 0.1e-6;

/** The rule that today's chargers are built to. */
const JUDGED_BY = '62368-plug';

function check({ entry, derived }: CheckInput): Finding[] {
  const { mains } = derived;
  const capacitors = fittedParts(entry, 'x-capacitor');
  const [first] = capacitors;
  if (first === undefined || mains === null || mains.hasDischargeIc) return [];
  const { xCapacitance } = mains;
  if (isMissing(xCapacitance) || xCapacitance.nominal <= ASKED_ABOVE * (1 + 1e-9)) return [];
  const subject = capacitors.flatMap((part) => part.references).join(', ');
  const start = `${subject} (${rounded(xCapacitance.nominal * 1e6)} µF)`;
  const words = noWayDown(mains) ?? tooSlow(mains);
  return words === null ? [] : [findingOf(RULE, atKey(...first.path), { message: `${start}${words}`, subject })];
}

function noWayDown({ bleed }: MainsFigures): string | null {
  if (!isMissing(bleed) || !bleed.needs.includes('bleed resistor across the line')) return null;
  return ' and neither a bleed resistor nor a discharge IC across the line among the parts.';
}

function tooSlow({ bleed, discharge }: MainsFigures): string | null {
  const row = discharge.find(({ rule }) => rule === JUDGED_BY);
  if (row === undefined || isMissing(bleed) || isMissing(row.left) || isMissing(row.limit)) return null;
  if (row.left.nominal <= row.limit.nominal) return null;
  const reached = isMissing(row.time) ? '' : ` It is reached after ${rounded(row.time.nominal, 2)} s.`;
  return `: ${rounded(row.left.nominal)} V left after ${row.seconds} s through ${rounded(bleed.nominal / 1e6)} MΩ, above ${rounded(row.limit.nominal)} V (${row.name}).${reached}`;
}
