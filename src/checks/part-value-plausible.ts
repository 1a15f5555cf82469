import type { Finding } from '../diagnostics/finding.ts';
import type { Part } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import type { Role } from '../roles/role.ts';
import { SI_UNITS } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { PREFIXES, prefixOf } from './unit-prefix.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'part-value-plausible',
  title: 'A value is far from what its role has',
  severity: 'error',
  why: 'A lost or mistaken prefix changes a value a thousandfold: m and M are both written on ohms, and tools disagree on them.',
  advice: 'Write the prefix as on the part; where the value is right, answer the finding.',
  source: {
    title: 'Issue threads of two circuit simulators on "10m" read as 10 MΩ and "100 M" as 100 mΩ',
    section: 'spans by role are common practice',
    standing: 'read',
  },
};

export const partValuePlausible: Check = { ...RULE, check };

/** A value this far outside its span cannot be a matter of taste. */
const CERTAINLY_OUTSIDE = 1000;

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) => {
    const role = roleOf(part.role);
    if (role === null) return [];
    return (part.rating?.quantities ?? []).flatMap((quantity) => findingsOf(quantity, part, role));
  });
}

function findingsOf(quantity: Quantity, part: Part, role: Role): Finding[] {
  const span = role.plausible.find((candidate) => candidate.dimension === quantity.dimension);
  const value = quantity.nominal;
  if (span === undefined || (value >= span.low && value <= span.high)) return [];
  const meant = PREFIXES.filter(({ factor }) => inside((value / prefixOf(quantity).factor) * factor, span));
  const nearest = meant.sort(
    (one, other) => distance(one.factor, prefixOf(quantity).factor) - distance(other.factor, prefixOf(quantity).factor),
  )[0];
  const number = rounded(value / prefixOf(quantity).factor, 4);
  const base = SI_UNITS[quantity.dimension];
  const hint = nearest === undefined ? '' : ` Did you mean ${number} ${nearest.prefix}${base}?`;
  const far = value < span.low / CERTAINLY_OUTSIDE || value > span.high * CERTAINLY_OUTSIDE;
  const message = `${part.references.join(', ')}: ${quantity.written} is outside ${inBase(span.low, base)} to ${inBase(span.high, base)} (${span.reason}).${hint}`;
  const severity = far && nearest !== undefined ? 'error' : 'warning';
  return [findingOf(RULE, atKey(...part.path), { message, severity, subject: part.references.join(', ') })];
}

function inside(value: number, span: { readonly low: number; readonly high: number }): boolean {
  return value >= span.low && value <= span.high;
}

function distance(one: number, other: number): number {
  return Math.abs(Math.log10(one / other));
}

function inBase(value: number, base: string): string {
  const fitting = PREFIXES.filter(({ factor }) => value >= factor).at(-1) ?? PREFIXES[0];
  return fitting === undefined ? `${value} ${base}` : `${rounded(value / fitting.factor)} ${fitting.prefix}${base}`;
}
