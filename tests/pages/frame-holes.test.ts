import { expect, test } from 'vitest';
import { fillHoles, hole } from '../../src/pages/frame-holes.ts';

test('every place of a frame is filled, and what stands around it stays', () => {
  const frame = `<head>${hole('head')}</head><main>${hole('zones')}</main><!-- kept -->`;
  expect(fillHoles(frame, { head: '<title>$& $1</title>', zones: '' })).toBe('<head><title>$& $1</title></head><main></main><!-- kept -->');
});

test('a place that nothing is given for stops the build', () => {
  expect(() => fillHoles(hole('uses'), {})).toThrow('Nothing is given for the place "uses" of a page');
});
