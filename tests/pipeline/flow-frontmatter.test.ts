import { expect, test } from 'vitest';
import { contentFolder } from './content-folder.ts';
import { placesOf, prepareIn } from './run-in.ts';

const DEVICE = 'device: { maker: Larkmoor, model: LM-S30, kind: wall charger }';

test.each([
  ['in braces on one line', `{ title: A, ${DEVICE}, photos: [{ file: gone.jpg, alt: The board }], logs: { run: { file: gone.csv } } }`],
  [
    'indented, in quotes',
    `  title: A\n  ${DEVICE}\n  "photos":\n    - { file: gone.jpg, alt: The board }\n  'logs':\n    run: { file: gone.csv }`,
  ],
])('photos and logs are looked for in data written %s', async (_, data) => {
  const prepared = await prepareIn(contentFolder({ 'teardowns/a/index.md': `---\n${data}\n---\n\nWords.\n` }));
  const rules = placesOf(prepared).map((place) => place.split(' ')[1]);
  expect(rules).toEqual(expect.arrayContaining(['photo-missing', 'log-file-missing']));
});
