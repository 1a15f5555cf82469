/** Things that a rating counts and that are no quantities: wire gauges, pins, layers, and drift per kelvin. */
const NOUN = /^\d+(?:\.\d+)?[ -]?(?:AWG|pins?|layers?|strands?|cells?|turns?|poles?|ppm\/(?:K|°C|C))(?![A-Za-z0-9])/i;
const LONGEST = 24;

/** "18 AWG", "24-pin", "50 ppm/K": the piece as written, or null where none stands. */
export function readCountedNoun(text: string, index: number): string | null {
  return NOUN.exec(text.slice(index, index + LONGEST))?.[0] ?? null;
}
