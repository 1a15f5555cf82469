import type { JudgementMark } from '../tables/table.ts';

/** The marks of judgement as symbols on a 14 px square. Shape carries the meaning; colour only repeats it. */
const MARK_SHAPES: Readonly<Record<JudgementMark, string>> = {
  within: '<circle class="med" cx="7" cy="7" r="4.7"/>',
  straddles: '<path class="med" d="M7 1.3 12.7 7 7 12.7 1.3 7Z"/><path class="solid" d="M7 1.3 12.7 7 7 12.7Z"/>',
  over: '<path class="warn" d="M7 1.2 13.4 12.6H.6Z"/>',
  withheld: '<path class="dash" d="M1 7h12"/>',
  error: '<path class="warn" d="M1.5 1.5h11v11h-11Z"/>',
  warning: '<path class="warn" d="M7 1.2 13.4 12.6H.6Z"/>',
  note: '<circle class="solid" cx="7" cy="7" r="3.6"/>',
};

/** Symbols of all marks, to stand once on a page before the first `mark`. */
export function markSymbols(): string {
  return Object.entries(MARK_SHAPES)
    .map(([mark, shape]) => `<symbol id="m-${mark}" viewBox="0 0 14 14">${shape}</symbol>`)
    .join('');
}

/** One mark. It is always followed by its word, so it is hidden from readers of text. */
export function mark(name: JudgementMark): string {
  return `<svg class="m" aria-hidden="true"><use href="#m-${name}"/></svg>`;
}
