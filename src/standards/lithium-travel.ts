import type { Source } from '../values/value.ts';

/** What a passenger may carry, by the energy of one battery in watt-hours. Airlines and countries ask more: the sheet defers to the carrier. */
export const LITHIUM_TRAVEL: {
  /** Carried in the cabin without asking, up to here. */
  readonly freeUpTo: number;
  /** Carried with the approval of the operator, up to here; at most two spares. */
  readonly approvedUpTo: number;
  readonly spares: number;
  readonly source: Source;
} = {
  freeUpTo: 100,
  approvedUpTo: 160,
  spares: 2,
  source: {
    title: '49 CFR 175.10(a)(18)',
    section:
      '(ii): 100 Wh, and 160 Wh with the operator’s approval; (iv): a power bank travels as a spare battery, in the cabin only; text of early 2021',
    standing: 'read',
  },
};
