/** Zones of a photo's frame: figures across, letters down; without I and O the fifth and later letters would follow, but four are enough. */
export const FIGURES_ACROSS = 6;
export const LETTERS_DOWN: readonly string[] = ['A', 'B', 'C', 'D'];

/** Room around the picture for zone letters and circles; the style sheet's padding is the same share of the drawing. */
export const MARGIN = 72;
/** Length of the separators between letters and figures. */
export const SEPARATOR = 22;
/** Distance of the letters' middle from the picture's edge. */
const LETTER_OFFSET = 13;
/** Distance of the circles' middle from the picture's edge. */
export const CIRCLE_OFFSET = 51;
/** Radius of a circle with its line: 38 px across. */
export const CIRCLE_RADIUS = 18;

/** Width of the whole drawing at 1 : 1: a wide picture fills the sheet, an upright one stands narrower. */
const WIDE = 1150;
const UPRIGHT = 784;

/** Pixels of a photo, or any pair in the same ratio. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** The drawing around one photo, in px at 1 : 1; the picture's corner stands at (MARGIN, MARGIN). */
export interface FrameSize {
  readonly kind: 'wide' | 'upright';
  readonly width: number;
  readonly height: number;
  readonly picture: PictureSize;
}

/** How large the drawing around a photo is. */
export function frameSize({ width, height }: PictureSize): FrameSize {
  const kind = width >= 1.15 * height ? 'wide' : 'upright';
  const whole = kind === 'wide' ? WIDE : UPRIGHT;
  const across = whole - 2 * MARGIN;
  const down = Math.round((across * height) / width);
  return { kind, width: whole, height: down + 2 * MARGIN, picture: { width: across, height: down } };
}

/** A letter or figure outside the frame, with its middle relative to the picture's corner. */
export interface ZoneLetter {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** All letters and figures, on both sides. */
export function zoneLetters({ width, height }: PictureSize): readonly ZoneLetter[] {
  const figures = Array.from({ length: FIGURES_ACROSS }, (_, index) => ({
    text: String(index + 1),
    x: ((index + 0.5) * width) / FIGURES_ACROSS,
  }));
  const letters = LETTERS_DOWN.map((text, index) => ({ text, y: ((index + 0.5) * height) / LETTERS_DOWN.length }));
  return [
    ...figures.flatMap(({ text, x }) => [-LETTER_OFFSET, height + LETTER_OFFSET].map((y) => ({ text, x, y }))),
    ...letters.flatMap(({ text, y }) => [-LETTER_OFFSET, width + LETTER_OFFSET].map((x) => ({ text, x, y }))),
  ];
}

/** Name of the zone that a point, in fractions of width and height, stands in: "B4". */
export function zoneAt(x: number, y: number): string {
  const column = Math.min(FIGURES_ACROSS - 1, Math.max(0, Math.floor(x * FIGURES_ACROSS)));
  const row = Math.min(LETTERS_DOWN.length - 1, Math.max(0, Math.floor(y * LETTERS_DOWN.length)));
  return `${LETTERS_DOWN[row] ?? ''}${column + 1}`;
}
