import { describe, expect, test } from 'vitest';
import { contentFolder, entryText } from './content-folder.ts';
import { placesOf, prepareIn } from './run-in.ts';

describe('pictures in the text', () => {
  test('one that is not beside the entry is an error at its place, one outside its folder too', async () => {
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', '![x](in.jpg)\n\n![x](no.jpg)\n\n![x](../../../../x.jpg)\n'),
      'teardowns/a/in.jpg': 'x',
    });
    const places = placesOf(await prepareIn(content)).filter((place) => place.includes('missing'));
    expect(places).toEqual(['teardowns/a/index.md:11:1 prose-image-missing', 'teardowns/a/index.md:13:1 prose-image-missing']);
  });

  test.each([
    ['../b/other.jpg', 'lies outside the folder of the entry'],
    ['Board.JPG', 'The file is spelt "board.jpg", not "Board.JPG"'],
    ['boord.jpg', 'it has "board.jpg". Did you mean "board.jpg"?'],
  ])('%s is told of in the words of a photo, a log and a spreadsheet', async (name, words) => {
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', `Words.\n\n![x](${name})\n`),
      'teardowns/a/board.jpg': 'x',
      'teardowns/b/index.md': entryText('B'),
      'teardowns/b/other.jpg': 'x',
    });
    const { diagnostics } = await prepareIn(content);
    const missing = diagnostics.find(({ rule }) => rule === 'prose-image-missing');
    expect(missing).toMatchObject({ file: 'teardowns/a/index.md', line: 11, column: 1, severity: 'error' });
    expect(missing?.message).toContain(words);
  });
});
