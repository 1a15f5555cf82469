import type { Dimension } from '../units/dimension.ts';
import type { Rating, Reading } from '../units/quantity.ts';
import { readRating } from '../units/read-rating.ts';
import { readOffers } from '../usb-pd/read-offers.ts';

/** Texts such as "5 V 3 A" and "650 V, 190 mΩ" stand in many entries; more than this many different ones are not kept. */
const KEPT = 4000;

/** The same reader, which reads a text once: a reading depends on the text alone and is never changed, so it can serve again. */
function remembered<Outcome>(read: (text: string) => Outcome): (text: string) => Outcome {
  const kept = new Map<string, Outcome>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known;
    const outcome = read(text);
    if (kept.size >= KEPT) kept.clear();
    kept.set(text, outcome);
    return outcome;
  };
}

const RATING_READERS = new Map<Dimension | null, (text: string) => Reading<Rating>>();

/** `readRating`, once for each text and dimension of a bare number. */
export function readRatingOnce(text: string, bareNumber: Dimension | null): Reading<Rating> {
  const known = RATING_READERS.get(bareNumber);
  if (known !== undefined) return known(text);
  const reader = remembered((rating: string) => readRating(rating, { bareNumber }));
  RATING_READERS.set(bareNumber, reader);
  return reader(text);
}

/** `readOffers`, once for each text. */
export const readOffersOnce = remembered(readOffers);
