import { escapeText, px } from '../markup.ts';
import type { CalloutItem } from './callout-item.ts';
import { layoutCallouts } from './callout-layout.ts';
import {
  CIRCLE_OFFSET,
  CIRCLE_RADIUS,
  FIGURES_ACROSS,
  LETTERS_DOWN,
  MARGIN,
  SEPARATOR,
  zoneLetters,
  type FrameSize,
} from './frame-size.ts';
import type { DrawnLength, PlacedLabel } from './length-label.ts';
import type { PlacedCallout } from './placed-callout.ts';
import type { Point } from './segment.ts';

/**
 * What a wide sheet draws around and over a photo: zone letters and figures with their separators, the numbered circles with their
 * leaders, and the labels of the lengths. It lies over the box that holds the picture, whose padding leaves `MARGIN` free on each side.
 * Each circle is a link to its row.
 */
export function photoAround(frame: FrameSize, items: readonly CalloutItem[], lengths: readonly DrawnLength[], label: string): string {
  const { callouts, labels } = layoutCallouts(frame.picture, items, lengths);
  const leaders = callouts.map(leaderPath).join('');
  const body =
    `<g transform="translate(${MARGIN} ${MARGIN})">${frameMarks(frame)}` +
    `<path class="ph-halo" d="${leaders}"/><path class="ph-leader" d="${leaders}"/>${labelsOf(labels)}` +
    `${callouts.map((callout) => circleLink(callout, items)).join('')}</g>`;
  return `<svg class="ph-around" role="group" aria-label="${escapeText(label)}" viewBox="0 0 ${frame.width} ${frame.height}">${body}</svg>`;
}

function frameMarks({ picture }: FrameSize): string {
  const { width, height } = picture;
  const across = Array.from({ length: FIGURES_ACROSS + 1 }, (_, index) => px((index * width) / FIGURES_ACROSS));
  const down = Array.from({ length: LETTERS_DOWN.length + 1 }, (_, index) => px((index * height) / LETTERS_DOWN.length));
  const separators =
    across.map((x) => `M${x} 0v${-SEPARATOR}M${x} ${height}v${SEPARATOR}`).join('') +
    down.map((y) => `M0 ${y}h${-SEPARATOR}M${width} ${y}h${SEPARATOR}`).join('');
  const letters = zoneLetters(picture).map(({ text, x, y }) => `<text x="${px(x)}" y="${px(y + 6)}">${text}</text>`);
  return `<g aria-hidden="true"><path class="ph-separator" d="${separators}"/><g class="ph-letters">${letters.join('')}</g></g>`;
}

/** From the dot through the gate to the edge of the circle. */
function leaderPath({ dot, gate, circle }: PlacedCallout): string {
  const to = towards(gate, circle, CIRCLE_OFFSET - CIRCLE_RADIUS);
  return `M${point(dot)}L${point(gate)}L${point(to)}`;
}

function circleLink({ index, dot, circle }: PlacedCallout, items: readonly CalloutItem[]): string {
  const item = items[index];
  if (item === undefined) return '';
  return (
    `<circle class="ph-dot" cx="${px(dot.x)}" cy="${px(dot.y)}" r="5"/>` +
    `<a class="ph-item" href="#${item.rowAnchor}" data-item="${item.number}" aria-label="${item.number}, ${escapeText(item.title)}">` +
    `<circle cx="${px(circle.x)}" cy="${px(circle.y)}" r="${CIRCLE_RADIUS}"/><text x="${px(circle.x)}" y="${px(circle.y + 6)}">${item.number}</text></a>`
  );
}

/** The table of lengths says the same, so that nobody hears it twice. */
function labelsOf(labels: readonly (PlacedLabel | null)[]): string {
  const drawn = labels.flatMap((label) => (label === null ? [] : [labelText(label)]));
  return drawn.length === 0 ? '' : `<g class="ph-lettering" aria-hidden="true">${drawn.join('')}</g>`;
}

function labelText({ lines, middle, tie }: PlacedLabel): string {
  const texts = lines.map(({ text, down }) => `<text x="${px(middle.x)}" y="${px(middle.y + down + 6)}">${escapeText(text)}</text>`);
  const tied = tie === null ? '' : `<path class="ph-tie" d="M${point(tie.from)}L${point(tie.to)}"/>`;
  return `${tied}${texts.join('')}`;
}

function towards(from: Point, to: Point, length: number): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const whole = Math.sqrt(dx * dx + dy * dy);
  return whole === 0 ? to : { x: from.x + (dx / whole) * length, y: from.y + (dy / whole) * length };
}

function point({ x, y }: Point): string {
  return `${px(x)} ${px(y)}`;
}
