import sharp from 'sharp';
import { PIXELS } from './picture.ts';

/** Bytes that a picture of the demo may have, and the qualities that are tried, the best first. */
const MOST_BYTES = 330_000;
const QUALITIES = [88, 84, 80, 76, 72, 68, 62];
/** Strength of the grain in steps of 256, and of the fall of light towards the corners. */
const GRAIN = 2.6;
const FALL = 0.1;

/** Gives a drawing what a camera adds, softness, grain and fall of light, and encodes it as JPEG. Same drawing, same picture. */
export async function asPhoto(svg: string): Promise<Buffer> {
  const { data, info } = await sharp(Buffer.from(svg), { limitInputPixels: PIXELS.width * PIXELS.height })
    .flatten({ background: '#bdc1be' })
    .blur(0.7)
    .raw()
    .toBuffer({ resolveWithObject: true });
  addGrain(data, info.width, info.channels);
  for (const quality of QUALITIES) {
    const jpeg = await sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } })
      .jpeg({ quality, mozjpeg: true })
      .toBuffer();
    if (jpeg.length <= MOST_BYTES || quality === QUALITIES.at(-1)) return jpeg;
  }
  throw new Error('no quality to try');
}

function addGrain(data: Buffer, width: number, channels: number): void {
  const next = seededNoise(20_260_301);
  const height = data.length / width / channels;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const grain = (next() + next() - 1) * 2 * GRAIN;
      const away = Math.hypot((2 * x) / width - 0.9, (2 * y) / height - 0.9);
      const light = 1.02 - FALL * Math.max(0, away - 0.35);
      const at = (y * width + x) * channels;
      for (let channel = 0; channel < Math.min(channels, 3); channel++) {
        data[at + channel] = Math.max(0, Math.min(255, Math.round((data[at + channel] ?? 0) * light + grain)));
      }
    }
  }
}

/** Numbers from 0 to 1 that are the same on every run: xorshift of 32 bits (Marsaglia, 2003). */
function seededNoise(seed: number): () => number {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4_294_967_296;
  };
}
