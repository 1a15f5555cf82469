import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { FIRST_OBJECT_FLAGS } from '../standards/usb-pd-message.ts';
import { offerFlags as judge } from '../usb-pd/judgement/offer-flags.ts';

const RULE: Rule = {
  id: 'offer-flags',
  title: 'Flags where none belong',
  severity: 'note',
  why: 'Flags are those of the first object; devices ignore them in the others. Some firmware sets them everywhere, and a slip in a digit looks the same.',
  advice: 'Compare the word with the tester; nothing need be done where it is so.',
  source: FIRST_OBJECT_FLAGS.source,
};

export const offerFlags: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
