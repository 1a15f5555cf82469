import type { DrawnZone } from '../corpus/drawn-sheet.ts';

/** A zone before it has its letter. */
export type SheetZone = DrawnZone;
