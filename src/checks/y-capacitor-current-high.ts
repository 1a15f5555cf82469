import type { Finding } from '../diagnostics/finding.ts';
import type { Entry, Part } from '../entry/entry.ts';
import { yCapacitorCurrent } from '../formulas/capacitor/y-capacitor-current.ts';
import { TOUCH_CURRENT_LIMITS } from '../standards/touch-current.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { bridgesTheBarrier, ratedParts } from './safety-class.ts';

const RULE: Rule = {
  id: 'y-capacitor-current-high',
  title: 'The Y capacitor passes more than a touch-current limit',
  severity: 'warning',
  why: 'Readers feel this current as a tingle; the figure that counts is the current, not the voltage on an open meter. An indication, never a touch-current test.',
  advice: 'Read the capacitance again; where it is right, say in the text what readers will feel.',
  source: { title: 'IEC 60950-1, table 5A', section: '0.25 mA for equipment without earth', standing: 'secondary' },
};

export const yCapacitorCurrentHigh: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  const bridging = ratedParts(entry, 'y-capacitor').filter((part) => bridgesTheBarrier(part, entry));
  const [first] = bridging;
  const capacitance = bridging.reduce((sum, part) => sum + capacitanceOf(part), 0);
  const { highLine } = derived.input;
  if (first === undefined || capacitance === 0 || isMissing(highLine) || entry.nameplate.input?.kind !== 'AC') return [];
  const current = yCapacitorCurrent.compute({ frequency: lineFrequency(entry), capacitance, voltage: highLine.nominal });
  const passed = TOUCH_CURRENT_LIMITS.filter((limit) => ['60950-not-earthed', '62368-es1'].includes(limit.id) && current > limit.amperes);
  const highest = passed.at(-1);
  if (highest === undefined) return [];
  const names = bridging.flatMap((part) => part.references).join(', ');
  const limits = passed.map((limit) => `${rounded(limit.amperes * 1e3)} mA (${limit.name})`).join(' and ');
  const message = `${names} (${rounded(capacitance * 1e9)} nF) passes ${rounded(current * 1e3)} mA at ${rounded(highLine.nominal)} V, above ${limits}.`;
  const severity = highest.id === '62368-es1' ? 'warning' : 'note';
  return [findingOf(RULE, atKey(...first.path), { message, severity, source: highest.source, subject: first.references.join(', ') })];
}

/** Farads of all pieces of a part between the two sides. */
function capacitanceOf(part: Part): number {
  const each = part.rating?.quantities.find((quantity) => quantity.dimension === 'capacitance')?.nominal ?? 0;
  const pieces = part.count * part.references.length;
  return part.arrangement === 'series' ? each / Math.max(pieces, 1) : each * pieces;
}

/** Highest printed line frequency in hertz; 60 Hz, the worse one of the two in use, where none is printed. */
function lineFrequency(entry: Entry): number {
  const printed = entry.nameplate.input?.frequencies.map((frequency) => frequency.high ?? frequency.nominal) ?? [];
  return printed.length > 0 ? Math.max(...printed) : 60;
}
