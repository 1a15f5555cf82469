/** A number and its unit belong on one line. The narrow space of plain text is too narrow between letters of a proportional face. */
const BEFORE_UNIT =
  /(\d)[ \u202f](?=(?:[kMmµnp]?(?:V|A|W|Ω|F|H|Hz|J|s|Wh|Ah|m|VAC|VDC)|K|h|%|°C|cm|px|ohms?|kg|g|min|points|USD|EUR)(?![A-Za-z]))/g;

/** Plain text with each number kept beside its unit by a space that does not break: "20 V". */
export function withUnitsKept(text: string): string {
  return text.replace(BEFORE_UNIT, '$1\u00a0');
}
