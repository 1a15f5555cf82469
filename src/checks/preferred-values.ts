import type { Finding } from '../diagnostics/finding.ts';
import type { Part } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import { neighbours, seriesOf } from '../standards/preferred-values.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { prefixOf } from './unit-prefix.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'preferred-values',
  title: 'A value is in no preferred series',
  severity: 'note',
  why: 'Resistors and capacitors are sold in the E series; a value outside of all of them is often a misread digit.',
  advice: 'Read the marking again; special values exist, and then the note can stay.',
  source: { title: 'IEC 60063, preferred number series for resistors and capacitors', section: 'E3 to E192', standing: 'secondary' },
};

export const preferredValues: Check = { ...RULE, check };

const CAPACITORS = ['safety capacitor', 'film capacitor', 'ceramic capacitor', 'aluminium electrolytic', 'polymer capacitor', 'capacitor'];

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) => {
    const dimension = seriesDimension(part);
    const value = part.rating?.quantities.find((quantity) => quantity.dimension === dimension && quantity.bound === 'value');
    if (value === undefined || !(value.nominal > 0) || seriesOf(value.nominal) !== null) return [];
    const near = neighbours(value.nominal, 'E24');
    const between = near === null ? '' : `; the nearest in E24 are ${inUnitOf(value, near.below)} and ${inUnitOf(value, near.above)}`;
    const message = `${part.references.join(', ')}: ${value.written} is in no series from E3 to E192${between}.`;
    return [findingOf(RULE, atKey(...part.path), { message, subject: part.references.join(', ') })];
  });
}

/** What of a part's rating comes in a series; wound parts are mostly made to order. */
function seriesDimension(part: Part): Dimension | null {
  // Shunts of metal come in 1, 2, 3 and 5 mΩ beside the series (common practice).
  if (part.role === 'current-sense-resistor') return null;
  const partClass = roleOf(part.role)?.partClass;
  if (partClass === 'resistor') return 'resistance';
  return partClass !== undefined && CAPACITORS.includes(partClass) ? 'capacitance' : null;
}

function inUnitOf(like: Quantity, value: number): string {
  return `${rounded(value / prefixOf(like).factor)} ${like.unit}`;
}
