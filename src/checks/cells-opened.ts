import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'cells-opened',
  title: 'Cells were opened, and no word on their charge',
  severity: 'error',
  why: 'A charged lithium cell that is pried or bent can burn; a teardown must say that it was empty.',
  advice: 'Say how far it was discharged: cells opened: { charge state: 2.9 V a cell }.',
  source: {
    title: 'CPSC recall notice on power banks, 19 December 2024',
    section: 'handling and disposal of lithium cells',
    standing: 'read',
  },
};

export const cellsOpened: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  if (entry.cellsOpened?.done !== true || entry.cellsOpened.chargeState !== null) return [];
  return [
    findingOf(RULE, atKey('cells opened'), { message: 'Cells were opened, and their charge state is not said.', subject: 'cells opened' }),
  ];
}
