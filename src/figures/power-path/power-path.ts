import type { PathFigureInput } from './path-links.ts';
import { powerPathPhone } from './power-path-phone.ts';
import { powerPathSheet } from './power-path-sheet.ts';

/** The power path in both its forms: across the sheet, and downwards for narrow screens and print. The style shows one of them. */
export function powerPathFigure(input: PathFigureInput): string {
  return powerPathSheet({ ...input, id: `${input.id}-across` }) + powerPathPhone({ ...input, id: `${input.id}-down` });
}
