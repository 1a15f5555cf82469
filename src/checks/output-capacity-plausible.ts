import type { Finding } from '../diagnostics/finding.ts';
import type { PrintedCapacity } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const RULE: Rule = {
  id: 'output-capacity-plausible',
  title: 'A power bank gives out more of its cells than losses allow',
  severity: 'warning',
  why: 'Real power banks state 74 to 88 % of the cell energy at the output; 95 % and more is the voltage change alone, without losses.',
  advice: 'Check whether the printed output figure is a computed one, and at which voltage it stands.',
  source: {
    title: 'Notes on official power-bank figures, public listing',
    section: '5,500 mAh 5 V of 37 Wh = 74.3 %; 13,000 mAh 5 V of 74 Wh = 87.8 %; limit of 95 % is common practice',
    standing: 'read',
  },
};

export const outputCapacityPlausible: Check = { ...RULE, check };

const MOST = 0.95;
/** A charge that was only converted from one voltage to the other agrees to its rounding. */
const ROUNDING = 0.005;

function check({ entry }: CheckInput): Finding[] {
  const { capacity, outputCapacity } = entry.nameplate;
  const cells = capacity === null ? null : energyOf(capacity);
  const output = outputCapacity === null ? null : energyOf(outputCapacity);
  if (cells === null || output === null || output <= cells * MOST) return [];
  const isConverted = Math.abs(output / cells - 1) <= ROUNDING;
  const theory = isConverted ? ' That is the voltage change alone, 100 % efficient: theory only.' : '';
  const message = `${rounded(output / JOULES_PER_WATT_HOUR)} Wh at the output are ${rounded((output / cells) * 100)} % of ${rounded(cells / JOULES_PER_WATT_HOUR)} Wh in the cells.${theory}`;
  return [
    findingOf(RULE, atValue('nameplate', 'output capacity'), {
      message,
      subject: 'output capacity',
      severity: isConverted ? 'note' : 'warning',
    }),
  ];
}

/** Joules printed, or charge times voltage. */
function energyOf({ charge, voltage, energy }: PrintedCapacity): number | null {
  if (energy !== null) return energy.quantity.nominal;
  return charge === null || voltage === null ? null : charge.quantity.nominal * voltage.quantity.nominal;
}
