import type { PathBlock, PowerPath } from '../../derived/power-path/power-path.ts';
import { escapeText, px } from '../markup.ts';
import { blockSentence, namedParts, outletName, outletNote, outletPower, stageName, twoLines } from './path-words.ts';
import { blockHeight, SHEET, type Placed } from './place-across.ts';
import type { PathLinks } from './path-links.ts';

const LINE = 16;

export function blockDrawing({ node, x, y }: Placed, block: PathBlock, scale: number, input: PathLinks): string {
  const height = blockHeight(node, scale);
  const top = y - height / 2;
  const names = namesOf(block);
  const lines = names.map(
    (line, index) =>
      `<text class="mid stage-name" x="${px(x)}" y="${px(top - 8 - (names.length - 1 - index) * LINE)}">${escapeText(line)}</text>`,
  );
  return (
    `<a href="${escapeText(input.familyLink)}" aria-label="${escapeText(`${names.join(' ')}: ${blockSentence(block)}`)}"><rect class="block" x="${px(x - SHEET.block / 2)}" y="${px(top)}" width="${SHEET.block}" height="${px(height)}"/>` +
    `<svg class="g" x="${px(x - 17)}" y="${px(y - 17)}" width="34" height="34"><use href="#s-${escapeText(block.kind)}"/></svg>${lines.join(' ')}</a>` +
    partNames(block, x, top + height + 17, input)
  );
}

function partNames(block: PathBlock, x: number, y: number, { partLink }: PathLinks): string {
  const { references, more } = namedParts(block.parts, 4);
  const items = references.map((reference) => `<a href="${escapeText(partLink(reference))}">${escapeText(reference)}</a>`);
  const rest = more === 0 ? [] : [`+${more}`];
  const cells = [...items, ...rest];
  const lines = cells.length > 3 ? [cells.slice(0, 2), cells.slice(2)] : [cells];
  return lines
    .map((line, index) =>
      line.length === 0 ? '' : `<text class="mid part-names" x="${px(x)}" y="${px(y + index * 15)}">${line.join(' ')}</text>`,
    )
    .join('');
}

function namesOf(block: PathBlock): readonly string[] {
  return twoLines(stageName(block), 13);
}

/** Room that a block takes above itself: its name, and the words at the barrier. */
export function roomAbove({ node }: Placed): number {
  if (node.block === null) return 0;
  return 10 + namesOf(node.block).length * LINE + (node.block.side === 'barrier' ? 36 : 0);
}

/** The barrier through the middle of each transformer, with the names of its sides above the first. */
export function barrierLines(placed: readonly Placed[], scale: number): string {
  const barriers = placed.filter(({ node }) => node.block?.side === 'barrier');
  return barriers
    .map(({ node, x, y }, index) => {
      const half = blockHeight(node, scale) / 2;
      const top = y - half - (node.block === null ? 0 : namesOf(node.block).length * LINE) - 14;
      const words =
        index > 0
          ? ''
          : `<text class="end" x="${px(x - 8)}" y="${px(top - 6)}">primary</text><text x="${px(x + 8)}" y="${px(top - 6)}">secondary</text>`;
      const above = `M${px(x)} ${px(top - 20)}V${px(top)}`;
      return `<path class="barrier" d="${above}M${px(x)} ${px(y - half)}V${px(y + half)}"/>${words}`;
    })
    .join('');
}

export function outletLabel({ node, x, y }: Placed): string {
  const { outlet } = node;
  if (outlet === null) return '';
  const left = x + 26;
  const words = outletNote(outlet);
  const note = words === null ? '' : `<text class="mono-note" x="${px(left)}" y="${px(y + 20)}">${escapeText(words)}</text>`;
  return `<text class="num strong" x="${px(left)}" y="${px(y + 2)}">${escapeText(outletName(outlet))} <tspan class="plain">${escapeText(outletPower(outlet))}</tspan></text>${note}`;
}

export function sourceSymbol({ source }: PowerPath, y: number): string {
  if (source.kind === 'battery') return '';
  const wave =
    source.kind === 'mains'
      ? `<path class="med" d="M24 ${px(y)}q5-11 10 0t10 0"/>`
      : `<path class="med" d="M25 ${px(y - 3)}h18"/><path class="dash" d="M25 ${px(y + 4)}h18"/>`;
  const line = source.line === null ? '' : `<text class="mid mono-note" x="34" y="${px(y + 55)}">${escapeText(source.line)}</text>`;
  return `<circle class="med" cx="34" cy="${px(y)}" r="20"/>${wave}<text class="mid" x="34" y="${px(y + 39)}">${source.name}</text>${line}`;
}
