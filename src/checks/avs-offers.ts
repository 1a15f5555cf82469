import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { EPR_AVS } from '../standards/usb-pd-adjustable-supplies.ts';
import { avsOffers as judge } from '../usb-pd/judgement/avs-offers.ts';

const RULE: Rule = {
  id: 'avs-offers',
  title: 'An adjustable supply that does not fit',
  severity: 'warning',
  why: 'The range and current of an adjustable voltage supply follow from the rated power: EPR AVS ends at 28, 36 or 48 V, SPR AVS carries the currents of the 15 V and 20 V supplies.',
  advice: 'Compare with the tester; mind that a label may leave the adjustable supplies out.',
  source: EPR_AVS.source,
};

export const avsOffers: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
