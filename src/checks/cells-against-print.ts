import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const RULE: Rule = {
  id: 'cells-against-print',
  title: 'The cells hold another energy than is printed',
  severity: 'warning',
  why: 'The printed energy decides whether a bank may fly and what it is sold as; the cells decide what it is.',
  advice: 'Count the cells again and read their marking; where it stays so, say so in the text and answer the finding.',
  source: commonPractice('5 %: nominal voltages of 3.6, 3.63 and 3.7 V are printed for the same cell'),
};

export const cellsAgainstPrint: Check = { ...RULE, check };

const SLACK = 0.05;

function check({ entry, derived: { bank } }: CheckInput): Finding[] {
  if (bank === null || entry.nameplate.capacity === null || isMissing(bank.cellEnergy) || isMissing(bank.printed)) return [];
  const { cellEnergy, printed, cells } = bank;
  if (cellEnergy.low <= printed.high * (1 + SLACK) && cellEnergy.high >= printed.low * (1 - SLACK)) return [];
  const [held, said] = [cellEnergy.nominal, printed.nominal].map((joules) => rounded(joules / JOULES_PER_WATT_HOUR));
  const message = `${cells.join(', ')}: ${held ?? ''} Wh by their marking, and ${said ?? ''} Wh printed on the case.`;
  return [findingOf(RULE, atValue('nameplate', 'capacity'), { message, subject: 'capacity' })];
}
