/** A piece of a text without the blanks around it, and where it starts in the text. */
export interface Piece {
  readonly piece: string;
  readonly start: number;
}

/** What stands between separators of one character each, with its place; an empty piece where nothing stands between two of them. */
export function piecesBetween(text: string, separator: RegExp): readonly Piece[] {
  let start = 0;
  return text.split(separator).map((whole) => {
    const lead = whole.trim() === '' ? 0 : whole.length - whole.trimStart().length;
    const found = { piece: whole.trim(), start: start + lead };
    start += whole.length + 1;
    return found;
  });
}
