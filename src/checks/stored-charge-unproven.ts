import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'stored-charge-unproven',
  title: 'An opened mains unit, and no word on how it was discharged',
  severity: 'warning',
  why: 'The bulk capacitor can hold its charge for hours, and a bleed path may have failed; readers copy what the photos show.',
  advice: 'Add discharged: { method: 2.2 kΩ 10 W resistor with insulated leads, voltage: 0.4 V }.',
  source: {
    title: 'Restarters wiki, How to safely discharge capacitors',
    section: 'unplug, wait, discharge, prove by meter',
    standing: 'read',
  },
};

export const storedChargeUnproven: Check = { ...RULE, check };

/** A meter reading that is not below this is no proof; aim of the same guide: 10 V or less. */
const MOST_VOLTS = 10;

function check({ entry }: CheckInput): Finding[] {
  if (entry.nameplate.input?.kind !== 'AC' || entry.photos.length === 0) return [];
  if (entry.discharged === null) {
    const message = `The entry shows ${entry.photos.length === 1 ? 'a photo' : `${entry.photos.length} photos`} of an opened mains unit and does not say how it was discharged.`;
    return [findingOf(RULE, atKey('photos'), { message, subject: 'discharged' })];
  }
  const left = entry.discharged.voltage?.quantity;
  if (left === undefined || left.nominal <= MOST_VOLTS) return [];
  const message = `The meter still showed ${left.written} after discharging; 10 V or less is the aim.`;
  return [findingOf(RULE, atKey('discharged'), { message, subject: 'discharged' })];
}
