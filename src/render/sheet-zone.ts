/** A zone before it has its letter. */
export interface SheetZone {
  readonly title: string;
  readonly layout: 'side' | 'full';
  /** Reading text in columns 1–2, or the sentence above. */
  readonly side: string;
  readonly matter: string;
}
