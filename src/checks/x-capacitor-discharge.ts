import { fittedParts, pieces } from '../derived/fitted-parts.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Entry, Part } from '../entry/entry.ts';
import { rcVoltageAfter } from '../formulas/capacitor/rc-voltage-after.ts';
import { DISCHARGE_RULES, es1CapacitorVoltage } from '../standards/x-capacitor-discharge.ts';
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

function check(input: CheckInput): Finding[] {
  const { entry } = input;
  const capacitors = fittedParts(entry, 'x-capacitor');
  const [first] = capacitors;
  const farads = capacitors.reduce((sum, part) => sum + pieces(part) * valueOf(part, 'capacitance'), 0);
  if (first === undefined || entry.nameplate.input?.kind !== 'AC' || farads <= ASKED_ABOVE * (1 + 1e-9)) return [];
  if (fittedParts(entry, 'discharge-ic').length > 0) return [];
  const bleeders = fittedParts(entry, 'bleed-resistor').filter((part) => capacitors.some((capacitor) => capacitor.stage === part.stage));
  const subject = capacitors.flatMap((part) => part.references).join(', ');
  const finding = (message: string): Finding[] => [findingOf(RULE, atKey(...first.path), { message, subject })];
  if (bleeders.length === 0) {
    return finding(
      `${subject} (${rounded(farads * 1e6)} µF) and neither a bleed resistor nor a discharge IC across the line among the parts.`,
    );
  }
  return slowDischarge(input, bleeders, farads).flatMap((words) => finding(`${subject} (${rounded(farads * 1e6)} µF): ${words}`));
}

function slowDischarge({ derived }: CheckInput, bleeders: readonly Part[], farads: number): string[] {
  const [only, ...others] = bleeders;
  const rule = DISCHARGE_RULES.find((candidate) => candidate.id === '62368-plug');
  const ohms = only === undefined || others.length > 0 ? null : resistanceOf(only);
  if (ohms === null || rule === undefined || isMissing(derived.input.peak)) return [];
  const left = rcVoltageAfter.compute({ start: derived.input.peak.nominal, time: rule.seconds, resistance: ohms, capacitance: farads });
  const limit = es1CapacitorVoltage(farads);
  if (left <= limit) return [];
  return [`${rounded(left)} V left after ${rule.seconds} s through ${rounded(ohms / 1e6)} MΩ, above ${rounded(limit)} V (${rule.name}).`];
}

/** Ohms of a chain or a single resistor; null where the arrangement of several pieces is not said. */
function resistanceOf(part: Part): number | null {
  const each = valueOf(part, 'resistance');
  const count = pieces(part);
  if (each <= 0 || (count > 1 && part.arrangement === 'single')) return null;
  return part.arrangement === 'parallel' ? each / count : each * count;
}

function valueOf(part: Entry['parts'][number], dimension: 'resistance' | 'capacitance'): number {
  return part.rating?.quantities.find((quantity) => quantity.dimension === dimension)?.nominal ?? 0;
}
