import { judgeOffers } from '../../src/usb-pd/judge-offers.ts';
import type { OfferRemark, PortOffers } from '../../src/usb-pd/judgement/judgement.ts';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import { CAPABILITY_SETS } from './capability-sets.ts';

/** What is known of the port; read through an EPR cable at USB-C where nothing is said. */
type Known = Partial<Omit<PortOffers, 'offers' | 'rated'>> & { readonly watts?: number };

export function judged(text: string, { watts, ...known }: Known = {}): readonly OfferRemark[] {
  const reading = readOffers(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.remarks));
  const rated = watts === undefined ? null : { low: watts, high: watts, written: `${watts} W` };
  return judgeOffers({ offers: reading.value, rated, revision: null, cable: 'EPR cable', connector: 'USB-C', protocols: [], ...known });
}

/** "severity rule" of each remark. */
export function said(text: string, known: Known = {}): readonly string[] {
  return judged(text, known).map(({ rule, severity }) => `${severity} ${rule}`);
}

/** Messages of one rule. */
export function message(text: string, rule: string, known: Known = {}): string {
  return judged(text, known)
    .filter((remark) => remark.rule === rule)
    .map((remark) => remark.message)
    .join(' ');
}

/** The words of a collected message as one text. */
export function wordsOf(id: string): string {
  const set = CAPABILITY_SETS.find((candidate) => candidate.id === id);
  return (set?.words ?? []).map((word) => `0x${word.toString(16).padStart(8, '0')}`).join(' ');
}
