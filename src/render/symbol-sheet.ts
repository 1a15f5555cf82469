import { markSymbols } from '../figures/mark.ts';
import { stageSymbols } from '../figures/stage-glyph.ts';

/** Symbols and hatchings that a page's figures point to, once a page: marks, the glyphs it draws, 45° and 135° hatching. */
export function symbolSheet(glyphs: Iterable<string>): string {
  return `<svg class="defs" aria-hidden="true"><defs>${HATCHINGS}</defs>${markSymbols()}${stageSymbols(glyphs)}</svg>`;
}

const HATCHINGS =
  '<pattern id="h45" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hline" d="M.5 0v7"/></pattern>' +
  '<pattern id="h135" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(135)"><path class="hline" d="M.5 0v7"/></pattern>' +
  '<pattern id="primary-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="side-line" d="M.5 0v7"/></pattern>' +
  '<pattern id="secondary-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(135)"><path class="side-line" d="M.5 0v7"/></pattern>';
