import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const RULE: Rule = {
  id: 'capacity-agrees',
  title: 'Charge, voltage and energy of a power bank do not agree',
  severity: 'warning',
  why: 'Energy is charge times cell voltage: 10,000 mAh at 3.7 V are 37 Wh. If the three disagree, one was misread or is promised twice.',
  advice: 'Read the three again, and check whether the charge is that of the cells or of the output.',
  source: { title: 'TSA, rules for lithium batteries in hand luggage', section: 'Wh = Ah × nominal voltage', standing: 'read' },
};

export const capacityAgrees: Check = { ...RULE, check };

const SLACK = 0.02;

function check({ entry }: CheckInput): Finding[] {
  const capacity = entry.nameplate.capacity;
  if (capacity?.charge == null || capacity.voltage === null || capacity.energy === null) return [];
  const { charge, voltage, energy } = capacity;
  const product = charge.quantity.nominal * voltage.quantity.nominal;
  const stated = energy.quantity.nominal;
  if (Math.abs(product - stated) <= stated * SLACK + energy.quantity.resolution / 2) return [];
  const message = `${charge.quantity.written} × ${voltage.quantity.written} is ${rounded(product / JOULES_PER_WATT_HOUR)} Wh, and ${energy.quantity.written} is printed.`;
  return [findingOf(RULE, atValue(...energy.path), { message, subject: 'capacity' })];
}
