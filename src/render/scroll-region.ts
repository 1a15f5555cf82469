import { escapeText } from '../figures/markup.ts';

/** A table too wide for a phone in a region of its own that scrolls and can be reached with the keyboard; the page never scrolls sideways. */
export function scrollRegion(label: string, table: string): string {
  return `<section class="wide-table" tabindex="0" aria-label="${escapeText(label)}, table">${table}</section>`;
}
