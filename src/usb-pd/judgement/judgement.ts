import type { Severity } from '../../diagnostics/finding.ts';
import type { Source } from '../../values/value.ts';
import type { OfferBody } from '../offer.ts';

/** Cable through which offers were read. */
export type ReadThrough = 'unmarked cable' | 'marked cable' | 'EPR cable' | 'captive cable';

/** An offer as it was written, with its word where one was given. */
export type JudgedOffer = OfferBody & { readonly written: string; readonly word: number | null };

/** What is judged: the offers of one port and what is known of the port. */
export interface PortOffers {
  readonly offers: readonly JudgedOffer[];
  /** The port's rated power, as low as the statement allows and as high; null where nobody states one. Watts. */
  readonly rated: { readonly low: number; readonly high: number; readonly written: string } | null;
  /** Revision of USB PD that the source claims: "3.1"; null where it is not known. */
  readonly revision: string | null;
  readonly cable: ReadThrough | null;
  readonly connector: 'USB-C' | 'USB-A' | 'barrel' | 'captive cable' | 'wireless';
  /** Makers' own protocols, which may carry what the offers do not list. */
  readonly protocols: readonly string[];
}

/** What a rule says of a port's offers. */
export interface OfferRemark {
  /** Id of the rule, which is that of its check. */
  readonly rule: string;
  readonly severity: Severity;
  /** A sentence; it names no port, so that it can stand behind one. */
  readonly message: string;
  readonly source: Source;
  /** Place in `offers`; null where the list as a whole is meant, 'power' where the stated power is. */
  readonly at: number | 'power' | null;
}

/** One rule: pure, and silent on ports that it is not about. */
export type OfferRule = (port: PortOffers) => readonly OfferRemark[];
