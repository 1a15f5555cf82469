import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { PPS_RANGES } from '../standards/usb-pd-adjustable-supplies.ts';
import { ppsRanges as judge } from '../usb-pd/judgement/pps-ranges.ts';

const RULE: Rule = {
  id: 'pps-ranges',
  title: 'A programmable range with other ends',
  severity: 'warning',
  why: 'Devices look for ranges with known ends: 5 V to 11, 16 or 21 V, in older editions from 3.3 V. A range with other ends may be passed over.',
  advice: 'Compare with the tester, and state the revision that the source claims.',
  source: PPS_RANGES.source,
};

export const ppsRanges: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
