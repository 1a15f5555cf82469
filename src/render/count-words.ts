/** A count with its noun: "1 sheet", "8 sheets". Thousands are set apart by a narrow space. */
export function countOf(count: number, noun: string, plural = `${noun}s`): string {
  return `${grouped(count)} ${count === 1 ? noun : plural}`;
}

/** A whole number with its thousands set apart by a narrow space: "1 874". */
export function grouped(count: number): string {
  return String(count).replaceAll(/\B(?=(\d{3})+(?!\d))/g, '\u202f');
}

/** First letter as a capital, the rest as it is. */
export function capitalised(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
