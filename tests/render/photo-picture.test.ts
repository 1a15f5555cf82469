import { describe, expect, test } from 'vitest';
import type { PhotoSource, PublishedPhoto } from '../../src/corpus/published-photo.ts';
import { largestPhoto, photoPicture } from '../../src/render/photo-picture.ts';
import { withBase } from '../../src/render/with-base.ts';

function source(format: PhotoSource['format'], width: number): PhotoSource {
  const address = `/photos/lm-q100/board-top-1a2b3c4d-${width}.${format === 'jpeg' ? 'jpg' : 'webp'}`;
  return { format, width, height: width * 0.75, address, bytes: width * 100 };
}

const BOARD: PublishedPhoto = {
  file: 'board-top.jpg',
  width: 4000,
  height: 3000,
  sources: [source('webp', 480), source('webp', 960), source('webp', 1780), source('jpeg', 960)],
  digest: '1a2b3c4d',
};

describe('the picture element of a photo', () => {
  test('states its size, so that nothing jumps when it comes, and is fetched when the reader comes near it', () => {
    const html = photoPicture(BOARD, { alt: 'Board "top" & heat sink' });
    expect(html).toContain('width="4000" height="3000" alt="Board &quot;top&quot; &amp; heat sink" loading="lazy" decoding="async"');
  });

  test('what is seen without scrolling is fetched at once', () => {
    expect(photoPicture(BOARD, { alt: 'Board', atOnce: true })).not.toContain('loading');
  });

  test('offers every width of the smaller format, and the other one to browsers without it', () => {
    const html = photoPicture(BOARD, { alt: 'Board', sizes: '50vw' });
    expect(html).toMatch(
      /<source type="image\/webp" srcset="\S+-480.webp 480w, \S+-960.webp 960w, \S+-1780.webp 1780w" sizes="50vw"><img src="\S+-960.jpg"/,
    );
  });

  test('every address of it moves with the base path', () => {
    const html = withBase(photoPicture(BOARD, { alt: 'Board' }), '/sub/');
    expect(html.match(/\/photos\//g)?.length).toBe(html.match(/\/sub\/photos\//g)?.length);
  });

  test('the picture in full is the widest file; a photo without files has none and draws nothing', () => {
    expect(largestPhoto(BOARD)?.width).toBe(1780);
    const none = { ...BOARD, sources: [] };
    expect([largestPhoto(none), photoPicture(none, { alt: 'Board' })]).toEqual([null, '']);
  });
});
