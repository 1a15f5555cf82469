/**
 * What is left of a part number or a name when writing habits are taken away: case, hyphens, spaces, dots, slashes, and the
 * compatibility forms of characters. Two spellings with the same remainder are perhaps the same thing; a person decides.
 */
function spellingRemainder(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, '');
}

/** For each text, the other ones with the same remainder, in the given order. Texts must be distinct. */
export function perhapsSame(texts: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const groups = new Map<string, string[]>();
  for (const text of texts) {
    const remainder = spellingRemainder(text);
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
