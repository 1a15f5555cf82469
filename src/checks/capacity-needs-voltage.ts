import type { Finding } from '../diagnostics/finding.ts';
import type { PrintedCapacity } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'capacity-needs-voltage',
  title: 'A capacity without its voltage',
  severity: 'note',
  why: 'Charge alone is no energy: whether a bank may fly (100 Wh, 160 Wh) and how often it fills a device cannot be said.',
  advice: 'Add the cell voltage or the energy as printed: 20000 mAh 3.7 V (74 Wh).',
  source: {
    title: 'TSA, rules for lithium batteries in hand luggage',
    section: 'Wh = Ah × nominal voltage; 100 and 160 Wh',
    standing: 'read',
  },
};

export const capacityNeedsVoltage: Check = { ...RULE, check };

function check({ entry: { nameplate } }: CheckInput): Finding[] {
  return [...judged(nameplate.capacity, 'capacity'), ...judged(nameplate.outputCapacity, 'output capacity')];
}

function judged(capacity: PrintedCapacity | null, subject: 'capacity' | 'output capacity'): Finding[] {
  if (capacity?.charge == null || capacity.voltage !== null || capacity.energy !== null) return [];
  const message = `${capacity.charge.quantity.written} is printed without a voltage or an energy.`;
  const advice = subject === 'capacity' ? RULE.advice : 'Add the output voltage that it is rated at, as printed: 5800 mAh 5 V.';
  return [findingOf(RULE, atValue('nameplate', subject), { message, subject, advice })];
}
