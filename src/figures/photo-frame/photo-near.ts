import { escapeText, percent, px } from '../markup.ts';
import type { CalloutItem } from './callout-item.ts';
import { FIGURES_ACROSS, LETTERS_DOWN, type PictureSize } from './frame-size.ts';
import type { DrawnLength, PlacedLabel } from './length-label.ts';
import { layoutNear, NEAR_RADIUS, nearLeader, type NearLayout, type NearMark } from './near-layout.ts';
import type { Point } from './segment.ts';

/** The narrow drawing, and how its marks stand: with rows of circles the page keeps room for them, with plates it lists what they lead to. */
export interface PhotoNear {
  readonly svg: string;
  readonly kind: NearLayout['kind'];
}

/** What a narrow page draws instead of the circles around: zone letters above and at the left, numbers on the parts or in rows, lengths. */
export function photoNear(picture: PictureSize, items: readonly CalloutItem[], lengths: readonly DrawnLength[], label: string): PhotoNear {
  const layout = layoutNear(picture, items, lengths, Math.max(2, ...items.map(({ number }) => String(number).length)));
  const body = `${leaders(layout)}${labelsOf(layout)}${layout.marks.map((mark) => markOf(mark, items, layout)).join('')}`;
  return {
    svg: `<svg class="ph-near" role="group" aria-label="${escapeText(label)}">${nearLetters()}${body}</svg>`,
    kind: layout.kind,
  };
}

function nearLetters(): string {
  const figures = Array.from(
    { length: FIGURES_ACROSS },
    (_, index) => `<text x="${percent((index + 0.5) / FIGURES_ACROSS)}" y="-7">${index + 1}</text>`,
  );
  const letters = LETTERS_DOWN.map(
    (letter, index) => `<text x="-11" y="${percent((index + 0.5) / LETTERS_DOWN.length)}" dy="5">${letter}</text>`,
  );
  return `<g class="ph-letters" aria-hidden="true">${figures.join('')}${letters.join('')}</g>`;
}

function leaders({ marks, size }: NearLayout): string {
  const lines = marks.flatMap((mark) => {
    const leader = nearLeader(mark);
    return leader === null ? [] : [ends(leader.from, leader.to, size)];
  });
  return `${lines.map((each) => `<line class="ph-halo" ${each}/>`).join('')}${lines.map((each) => `<line class="ph-leader" ${each}/>`).join('')}`;
}

function ends(from: Point, to: Point, size: PictureSize): string {
  const [a, b] = [shares(from, size), shares(to, size)];
  return `x1="${a.x}" y1="${a.y}" x2="${b.x}" y2="${b.y}"`;
}

function shares({ x, y }: Point, { width, height }: PictureSize): { readonly x: string; readonly y: string } {
  return { x: percent(x / width), y: percent(y / height) };
}

/** A circle with its number; one outside the picture hangs on its gate by a length in px, whatever the picture's size. */
function markOf({ index, dot, circle, gate }: NearMark, items: readonly CalloutItem[], { size, kind, mark }: NearLayout): string {
  const item = items[index];
  if (item === undefined) return '';
  const at = shares(gate ?? circle, size);
  const away = gate === null ? 0 : circle.y - gate.y;
  const link = `<a class="ph-item" href="#${item.rowAnchor}" data-item="${item.number}" aria-label="${item.number}, ${escapeText(item.title)}">`;
  if (kind === 'on plates') return dotOf(dot, size, 2.5) + plateOf(at, mark, link, item.number);
  if (gate === null)
    return `${link}<circle cx="${at.x}" cy="${at.y}" r="${NEAR_RADIUS}"/><text x="${at.x}" y="${at.y}" dy="4.5">${item.number}</text></a>`;
  return (
    `${dotOf(dot, size, 3)}<svg class="ph-out" x="${at.x}" y="${at.y}"><path class="ph-leader" d="M0 0V${px(away)}"/>` +
    `${link}<circle cy="${px(away)}" r="${NEAR_RADIUS}"/><text y="${px(away + 4.5)}">${item.number}</text></a></svg>`
  );
}

function dotOf(dot: Point, size: PictureSize, radius: number): string {
  const spot = shares(dot, size);
  return `<circle class="ph-dot" cx="${spot.x}" cy="${spot.y}" r="${radius}"/>`;
}

/** A number on a plate that keeps its px on a page of any width. */
function plateOf(at: { readonly x: string; readonly y: string }, { width, height }: PictureSize, link: string, number: number): string {
  const plate = `<rect class="ph-plate" x="${px(-width / 2)}" y="${px(-height / 2)}" width="${px(width)}" height="${px(height)}"/>`;
  return `<svg class="ph-out" x="${at.x}" y="${at.y}">${link}${plate}<text y="4.5">${number}</text></a></svg>`;
}

/** The table of lengths says the same, so that nobody hears it twice. */
function labelsOf({ labels, size }: NearLayout): string {
  const drawn = labels.flatMap((label) => (label === null ? [] : [labelOf(label, size)]));
  return drawn.length === 0 ? '' : `<g class="ph-lettering" aria-hidden="true">${drawn.join('')}</g>`;
}

/** The ground hides the tie's end, which leads to the label's middle so that it meets it on a page of any width. */
function labelOf({ lines, middle, box, tie }: PlacedLabel, size: PictureSize): string {
  const at = shares(middle, size);
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const tied = tie === null ? '' : `<line class="ph-tie" ${ends(middle, tie.to, size)}/>`;
  const texts = lines.map(({ text, down }) => `<text y="${px(down + 4.5)}">${escapeText(text)}</text>`);
  return `${tied}<svg class="ph-out" x="${at.x}" y="${at.y}"><rect class="ph-ground" x="${px(-width / 2)}" y="${px(-height / 2)}" width="${px(width)}" height="${px(height)}"/>${texts.join('')}</svg>`;
}
