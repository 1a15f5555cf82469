import type { TouchVoltage } from '../derived/mains/mains-figures.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import { TOUCH_CURRENT_LIMITS } from '../standards/touch-current.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'touch-voltage-open-meter',
  title: 'A touch voltage read on an open meter',
  severity: 'note',
  why: 'Meter and Y capacitor are a divider: tens of volts there are usual for a device without earth and no fault by themselves. What counts is the current.',
  advice:
    'Give the touch current too, read through the network of a standard by somebody who may; say in the text that readers may feel a tingle. An indication, never a touch-current test.',
  source: commonPractice('a tingle from a two-pin supply, discussed with 80 V on an open meter'),
};

export const touchVoltageOpenMeter: Check = { ...RULE, check };

/** Where a touch current stands beside it, nothing has to be said any more. */
function check({ entry, derived }: CheckInput): Finding[] {
  if (entry.measurements.some(({ subject }) => subject === 'touch current')) return [];
  return (derived.mains?.touchVoltages ?? []).map((reading) =>
    findingOf(RULE, atKey(...reading.path), { message: messageOf(entry, reading), subject: reading.written }),
  );
}

function messageOf(entry: Entry, { written, line, meter, through, divider, passed }: TouchVoltage): string {
  const resistance = inUnit(meter, 1e6, 'MΩ');
  const reading = `${written}${line === null ? '' : ` at ${line}`} is a voltage into an open meter, not touch current`;
  const small = resistance === null || isMissing(through) ? '' : `: ${resistance} let ${inUnit(through, 1e-6, 'µA') ?? ''} through`;
  const names = entry.parts
    .filter(({ role }) => role === 'y-capacitor')
    .map(({ references, rating }) => `${references.join(', ')} (${rating?.written ?? ''})`);
  const most = inUnit(divider, 1, 'V');
  const current = inUnit(passed, 1e-3, 'mA');
  if (most === null || current === null) return `${reading}${small}. With the Y capacitor among the parts its current could be worked out.`;
  return `${reading}${small}. ${names.join(' and ')} can put up to ${most} on such a meter and ${plural(names)} at most ${current} to somebody who touches the output; the limit to look at is ${limitInWords()}.`;
}

function plural(names: readonly string[]): string {
  return names.length === 1 ? 'passes' : 'pass';
}

function limitInWords(): string {
  const limit = TOUCH_CURRENT_LIMITS.find(({ id }) => id === '60950-not-earthed');
  return limit === undefined ? 'that of equipment without earth' : `${rounded(limit.amperes * 1e3)} mA (${limit.name})`;
}

function inUnit(known: Known, scale: number, unit: string): string | null {
  return isMissing(known) ? null : `${rounded(known.nominal / scale)} ${unit}`;
}
