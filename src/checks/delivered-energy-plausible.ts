import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const RULE: Rule = {
  id: 'delivered-energy-plausible',
  title: 'A power bank gave out more of its cells than losses allow',
  severity: 'warning',
  why: 'Cells, converter and cable each take a share; official figures lie between 74 and 88 %. Above 95 % the cells hold more than said, or the meter counted wrongly.',
  advice: 'Check the energy of the cells, the voltage at which the charge was counted, and whether the bank was recharged in between.',
  source: {
    title: 'Notes on official power-bank figures, public listing',
    section: '27.5 Wh of 37 Wh = 74.3 %; 65 Wh of 74 Wh = 87.8 %; limit of 95 % is common practice',
    standing: 'read',
  },
};

export const deliveredEnergyPlausible: Check = { ...RULE, check };

const MOST = 0.95;

function check({ entry, derived: { bank } }: CheckInput): Finding[] {
  if (bank === null || isMissing(bank.stored)) return [];
  const cells = bank.stored.nominal / JOULES_PER_WATT_HOUR;
  return bank.delivered.flatMap(({ index, log, energy, ratio, output }) => {
    if (isMissing(ratio) || isMissing(energy) || ratio.low <= MOST) return [];
    const path = index === null ? entry.logs.find(({ id }) => id === log)?.path : entry.measurements[index]?.path;
    if (path === undefined) return [];
    const at = output === null ? '' : ` at ${output}`;
    const message = `${rounded(energy.nominal / JOULES_PER_WATT_HOUR)} Wh delivered${at} are ${rounded(ratio.nominal * 100)} % of ${rounded(cells)} Wh in the cells.`;
    return [findingOf(RULE, atKey(...path), { message, subject: 'delivered energy' })];
  });
}
