import type { PartFacts } from './part-facts/part-facts.ts';

/** The fact sheet of a part number, or of the number that it is another spelling of; null where there is none. */
export function factsOfPart(facts: readonly PartFacts[], number: string): PartFacts | null {
  return facts.find((sheet) => sheet.number === number || sheet.alsoWritten.includes(number)) ?? null;
}
