/** How a text is brought down to what tells it apart: a part number, or the name of a maker. */
export type SpellingOf = 'number' | 'name';

/**
 * Endings that say how a part is packed or that it is free of lead, not what it is: "-TR", "/TR", "-T/R", "-REEL7", "#PBF", ",115"
 * (common practice). Only behind a mark, and figures only behind a comma: letters and figures that belong to the number stay.
 */
const PACKING = /(?:[-/#, ](?:TR|T\/R|T&R|REEL7?|RL7?|TUBE|TAPE|TRPBF|PBF)|, ?(?:115|118|215|235)|\((?:TR|REEL|TUBE)\))+$/u;

/** Forms of companies behind a name (common practice). */
const COMPANY = /(?:[ ,.]+(?:CO|COMPANY|LTD|LIMITED|INC|CORP|CORPORATION|GMBH|AG|LLC|PLC|BV|AB|SA|SRL|KG)\b\.?)+$/u;

/**
 * What is left of a part number or a name when writing habits are taken away: case, hyphens, spaces, dots, slashes, the compatibility forms
 * of characters, packing suffixes, company forms. Two spellings with the same remainder are perhaps the same thing; a person decides.
 */
function spellingRemainder(text: string, of: SpellingOf): string {
  const upper = text.normalize('NFKC').toUpperCase().trim();
  const core = upper.replace(of === 'number' ? PACKING : COMPANY, '');
  return (core === '' ? upper : core).replaceAll(/[^\p{L}\p{N}]/gu, '');
}

/** For each text, the other ones with the same remainder, in the given order. Texts must be distinct. */
export function perhapsSame(texts: readonly string[], of: SpellingOf = 'number'): ReadonlyMap<string, readonly string[]> {
  const groups = new Map<string, string[]>();
  for (const text of texts) {
    const remainder = spellingRemainder(text, of);
    if (remainder === '') continue;
    const group = groups.get(remainder);
    if (group === undefined) groups.set(remainder, [text]);
    else group.push(text);
  }
  const others = new Map<string, readonly string[]>();
  for (const group of groups.values()) {
    if (group.length < 2) continue;
    for (const text of group)
      others.set(
        text,
        group.filter((other) => other !== text),
      );
  }
  return others;
}
