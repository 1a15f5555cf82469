import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { PPS_CURRENTS } from '../standards/usb-pd-adjustable-supplies.ts';
import { ppsCurrents as judge } from '../usb-pd/judgement/pps-currents.ts';

const RULE: Rule = {
  id: 'pps-currents',
  title: 'A programmable range and the rated power do not meet',
  severity: 'warning',
  why: 'PPS may be left out, but a source that has it has the ranges and currents of its power, counted at the nominal voltage: 21 V × 5 A stands for 100 W. More is in order only where the power-limited bit says so.',
  advice: 'Compare with the tester; the word of the object shows its power-limited bit.',
  source: PPS_CURRENTS.source,
};

export const ppsCurrents: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
