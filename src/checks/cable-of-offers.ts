import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { CABLE_CURRENT } from '../standards/usb-output-limits.ts';
import { cableOfOffers as judge } from '../usb-pd/judgement/cable-of-offers.ts';

const RULE: Rule = {
  id: 'cable-of-offers',
  title: 'The cable decides what a port offers',
  severity: 'warning',
  why: 'A source shows more than 3 A only with a cable marked for it, and more than 20 V only with one marked for EPR: a list read through a lesser cable understates the source.',
  advice: 'State the cable of the reading: read through: marked cable, and read again where it was none.',
  source: CABLE_CURRENT.source,
};

export const cableOfOffers: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
