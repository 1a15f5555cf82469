import type { SheetSummary } from '../corpus/prepared.ts';
import { newestFirst } from '../corpus/newest-first.ts';
import { escapeText } from '../figures/markup.ts';

const SHOWN = 5;

/** Heading and list of the newest sheets; nothing where there is none. */
export function newestSheets(sheets: readonly SheetSummary[]): string {
  const newest = [...sheets].sort(newestFirst).slice(0, SHOWN);
  if (newest.length === 0) return '';
  const lines = newest.map(
    (sheet) =>
      `<li><span class="q">${escapeText(sheet.number ?? sheet.published)}</span> <a href="/teardowns/${sheet.slug}/">${escapeText(`${sheet.maker} ${sheet.name}`)}</a></li>`,
  );
  return `<h2>Newest sheets</h2><ul class="lines">${lines.join('')}</ul>`;
}
