import { hasErrors } from '../units/cursor.ts';
import type { Reading } from '../units/quantity.ts';
import { readOfferList } from './offer-list.ts';
import type { ReadOffer } from './offer-list-state.ts';

/**
 * Reads what a port offers: text as labels and testers print it ("5V⎓3A / 9V⎓2.22A", "PPS: 3.3–21 V 5 A", "EPR AVS 15–28 V 140 W"),
 * raw 32-bit words, or both. A printed total ("65W Max") is compared with what the offers reach. Never throws.
 */
export function readOffers(text: string): Reading<readonly ReadOffer[]> {
  const { offers, remarks } = readOfferList(text);
  if (hasErrors(remarks)) return { ok: false, remarks };
  return { ok: true, value: offers, remarks };
}
