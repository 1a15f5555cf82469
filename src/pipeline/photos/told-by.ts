/** What a file that others get tells of itself, in one sentence; null where it tells nothing. */
export function toldBy(word: string, metadata: readonly string[]): string | null {
  if (metadata.length === 0) return null;
  const making = word === 'picture' || word === 'film' ? 'taken' : 'made';
  return `The ${word} holds ${metadata.join(' and ')}, which can tell where and by whom it was ${making}; store it without`;
}
