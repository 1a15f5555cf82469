import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { photoLengths, TILT_SLOPE, type PhotoLength } from '../../src/derived/photo-lengths/photo-lengths.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../src/entry/read-entry.ts';
import { placeWords } from '../../src/figures/photo-frame/place-words.ts';
import { isMissing } from '../../src/values/value.ts';

const WIDTH = 1600;
const HEIGHT = 1000;
/** Marks are found by their colours: two of the scale, two of the distance. */
const COLOURS = { scaleFrom: [255, 0, 0], scaleTo: [0, 255, 0], from: [0, 0, 255], to: [255, 0, 255] } as const;
type Mark = keyof typeof COLOURS;
type Places = Readonly<Record<Mark, readonly [number, number]>>;

/** Draws a picture with the four marks at these pixels, and finds each of them again as the mean of its pixels. */
async function foundAgain(marks: Places): Promise<Places> {
  const dots = Object.entries(marks).map(
    ([name, [x, y]]) => `<circle cx="${x}" cy="${y}" r="5" fill="rgb(${COLOURS[name as Mark].join(' ')})"/>`,
  );
  const drawn = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}"><rect width="100%" height="100%" fill="white"/>${dots.join('')}</svg>`;
  const pixels = await sharp(Buffer.from(drawn)).removeAlpha().raw().toBuffer();
  const meanOf = ([red, green, blue]: readonly [number, number, number]): readonly [number, number] => {
    const hits: [number, number][] = [];
    for (let at = 0; at < pixels.length; at += 3) {
      if (pixels[at] === red && pixels[at + 1] === green && pixels[at + 2] === blue)
        hits.push([(at / 3) % WIDTH, Math.floor(at / 3 / WIDTH)]);
    }
    const mean = (axis: 0 | 1): number => hits.reduce((sum, hit) => sum + hit[axis] + 0.5, 0) / hits.length;
    return [mean(0), mean(1)];
  };
  return {
    scaleFrom: meanOf(COLOURS.scaleFrom),
    scaleTo: meanOf(COLOURS.scaleTo),
    from: meanOf(COLOURS.from),
    to: meanOf(COLOURS.to),
  };
}

function entryOf(photo: readonly string[]): { readonly entry: Entry; readonly messages: readonly string[] } {
  const text = [
    '---',
    'title: A charger',
    'device: { maker: Larkmoor, model: LM-S30, kind: wall charger }',
    'photos:',
    ...photo,
    '---',
    '',
  ].join('\n');
  const { entry, findings } = readEntry({ slug: 'charger', file: 'charger/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error(findings.map(({ message }) => message).join('; '));
  return { entry, messages: findings.map(({ message }) => message) };
}

/** The length as an author gets it: places in per cent with one decimal, as the picker gives them. */
function measured(places: Places, scaleLength: string): PhotoLength {
  const at = (mark: Mark): string => placeWords(places[mark][0] / WIDTH, places[mark][1] / HEIGHT).place;
  const { entry } = entryOf([
    '  - file: board.jpg',
    '    alt: A board from above',
    `    scale: { from: ${at('scaleFrom')}, to: ${at('scaleTo')}, length: ${scaleLength} }`,
    `    distances: { creepage T1: { from: ${at('from')}, to: ${at('to')} } }`,
  ]);
  const [length] = photoLengths(entry, [{ width: WIDTH, height: HEIGHT }]);
  if (length === undefined) throw new Error('nothing measured');
  return length;
}

function interval({ length }: PhotoLength): { low: number; nominal: number; high: number } {
  if (isMissing(length)) throw new Error(length.reason);
  return { low: length.low * 1000, nominal: length.nominal * 1000, high: length.high * 1000 };
}

describe('lengths in drawn pictures', () => {
  // 20 px are 1 mm; marks are drawn, found again by their colour, and written as the picker writes them.
  test.each([
    ['across', [600, 400], [760, 400], 8],
    ['down', [600, 300], [600, 700], 20],
    ['aslant, 3 by 4', [200, 100], [440, 420], 20],
    ['short', [800, 500], [860, 500], 3],
  ] as const)('%s: the true length lies within the interval, and the reading is near it', async (_, from, to, millimetres) => {
    const places = await foundAgain({ scaleFrom: [200, 900], scaleTo: [1200, 900], from, to });
    const { low, nominal, high } = interval(measured(places, '50 mm'));
    expect(low).toBeLessThanOrEqual(millimetres);
    expect(high).toBeGreaterThanOrEqual(millimetres);
    // Places in tenths of a per cent: 0.8 px across at each of four marks, 20 px to the millimetre.
    expect(Math.abs(nominal - millimetres)).toBeLessThan(0.15);
  });

  test('a package side serves as scale, in inches too', async () => {
    const places = await foundAgain({ scaleFrom: [300, 300], scaleTo: [808, 300], from: [300, 600], to: [500, 600] });
    const { low, high } = interval(measured(places, '1 in'));
    expect(low).toBeLessThanOrEqual(10);
    expect(high).toBeGreaterThanOrEqual(10);
  });

  test('a line aslant to the camera by up to the stated slope is within the interval, and so is an aslant scale', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: TILT_SLOPE, noNaN: true }),
        fc.double({ min: 0, max: TILT_SLOPE, noNaN: true }),
        (ofLine, ofScale) => {
          const seen = (pixels: number, slope: number): number => pixels * projected(slope);
          const places: Places = {
            scaleFrom: [200, 900],
            scaleTo: [200 + seen(1000, ofScale), 900],
            from: [300, 400],
            to: [300 + seen(400, ofLine), 400],
          };
          const { low, high } = interval(measured(places, '50 mm'));
          expect(low).toBeLessThanOrEqual(20);
          expect(high).toBeGreaterThanOrEqual(20);
        },
      ),
      { seed: 20_261_125, numRuns: 60 },
    );
  });

  test('without a scale, and without the size of the picture, the length is withheld with the reason', () => {
    const marks = ['  - file: board.jpg', '    alt: A board from above', '    distances: { gap: { from: 10 % 10 %, to: 20 % 10 % } }'];
    const [unscaled] = photoLengths(entryOf(marks).entry, [{ width: WIDTH, height: HEIGHT }]);
    expect(unscaled?.length).toMatchObject({ missing: true, reason: 'the photo has no scale' });
    const scaled = [...marks, '    scale: { from: 10 % 90 %, to: 60 % 90 %, length: 30 mm }'];
    expect(photoLengths(entryOf(scaled).entry, [null])[0]?.length).toMatchObject({ missing: true, reason: 'the photo was not published' });
  });
});

describe('places in a photo', () => {
  test.each([
    ['    callouts: { Q1: 120 % 40 % }', '"120 % 40 %" lies outside the photo.'],
    ['    callouts: { Q1: E4 }', '"E4" lies outside the photo.'],
    ['    callouts: { Q1: B7 }', '"B7" lies outside the photo.'],
    ['    callouts: { Q1: left }', '"left" is no place in a photo.'],
    ['    callouts: { Q9: B4 }', 'There is no part "Q9".'],
    ['    distances: { gap: { from: 10 % 10 %, to: 10 % 10 % } }', 'Both ends stand at the same point of the photo.'],
  ])('%s', (line, message) => {
    expect(entryOf(['  - file: board.jpg', '    alt: A board from above', line]).messages).toContain(message);
  });

  test('two scales in one photo are a key given twice', () => {
    const scale = '    scale: { from: 10 % 90 %, to: 60 % 90 %, length: 30 mm }';
    const text = ['---', 'title: A charger', 'photos:', '  - file: board.jpg', scale, scale, '---', ''].join('\n');
    expect(parseFrontmatter(text).findings.map(({ rule }) => rule)).toContain('duplicate-key');
  });
});

/** Seen length over true length of a line that rises by `slope`, summed over many short pieces of the line. */
function projected(slope: number): number {
  const pieces = 1000;
  let [seen, whole] = [0, 0];
  for (let at = 0; at < pieces; at += 1) {
    const run = 1 / pieces;
    seen += run;
    whole += Math.hypot(run, run * slope);
  }
  return seen / whole;
}
