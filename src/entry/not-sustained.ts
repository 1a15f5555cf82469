/**
 * The words of an author for a load that the device did not hold, in place of a result: "not sustained", with what happened behind it
 * ("not sustained, C1 fell back to 12 V"). Null for anything else.
 */
export function notSustainedWords(text: string | undefined): string | null {
  const words = text?.trim() ?? '';
  return /^not\s+sustained(?:$|[\s,;:.(–-])/iu.test(words) ? words.replace(/^not\s+sustained/iu, 'not sustained') : null;
}
