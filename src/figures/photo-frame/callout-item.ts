/** A numbered mark on a photo, ready to be drawn. */
export interface CalloutItem {
  /** Number of the part's row in the part table. */
  readonly number: number;
  /** "T1, transformer". */
  readonly title: string;
  /** Anchor of the part's row. */
  readonly rowAnchor: string;
  /** Anchor of the mark itself. */
  readonly anchor: string;
  /** Fractions of width and height. */
  readonly x: number;
  readonly y: number;
}
