import { describe, expect, test } from 'vitest';
import { contentFolder, entryText } from './content-folder.ts';
import { placesOf, prepareIn } from './run-in.ts';

describe('links between entries', () => {
  test.each([
    ['[x](../b/)', null],
    ['[x](/teardowns/b/index.md#y)', null],
    ['[x](/methods/stored-energy/)', null],
    ['[x](/rules/internal-fault/)', null],
    ['[x](/)', null],
    ['[x](/teardowns/)', null],
    ['[x](../bb/)', 'there is no teardown "bb"'],
    ['[x](/teardown/b/)', 'the site has no such section'],
    ['[x](/methods/stored-enrgy/)', 'did you mean "stored-energy"?'],
    ['[x](notes.pdf)', 'files beside an entry are not published'],
  ])('%s', async (link, message) => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A', `${link}\n`), 'teardowns/b/index.md': entryText('B') });
    const { diagnostics } = await prepareIn(content);
    expect(diagnostics.map((diagnostic) => diagnostic.message)).toEqual(message === null ? [] : [expect.stringContaining(message)]);
  });
});

describe('former addresses', () => {
  test('one that is a live page, and one that two entries claim, are errors in each place', async () => {
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', 'x\n', 'former addresses: [/teardowns/b/, /old/]\n'),
      'teardowns/b/index.md': entryText('B', 'x\n', 'former addresses: [/old/index.html, /teardowns/fine/]\n'),
    });
    expect(placesOf(await prepareIn(content))).toEqual([
      'teardowns/a/index.md:7:20 former-address-taken',
      'teardowns/a/index.md:7:35 former-address-taken',
      'teardowns/b/index.md:7:20 former-address-taken',
    ]);
  });
});

describe('former addresses that no page can stand at', () => {
  test.each(['/planner/', '/bench/', '/parts/og7014/', '/feed.xml', '/index.html', '/teardowns/b/data.json'])(
    '%s is an error at its place',
    async (written) => {
      const content = contentFolder({
        'teardowns/a/index.md': entryText('A', 'x\n', `former addresses: ["${written}"]\n`),
        'teardowns/b/index.md': entryText('B'),
      });
      expect(placesOf(await prepareIn(content))).toEqual(['teardowns/a/index.md:7:20 former-address-taken']);
    },
  );
});

describe('addresses that were published', () => {
  const list = 'published-addresses.txt';

  test('one that no entry has, and one whose entry is a draft again, are errors in the list; one with a redirect is in order', async () => {
    const content = contentFolder({
      [list]: '# what was published\n/teardowns/a/\n/teardowns/gone/\n\n/teardowns/moved/\n/teardowns/c/\n',
      'teardowns/a/index.md': entryText('A'),
      'teardowns/b/index.md': entryText('B', 'x\n', 'former addresses: [/teardowns/moved/]\n'),
      'teardowns/c/index.md': entryText('C').replace('status: published', 'status: draft'),
    });
    const prepared = await prepareIn(content);
    expect(placesOf(prepared).filter((place) => place.startsWith(list))).toEqual([
      `${list}:3:1 published-address-lost`,
      `${list}:6:1 published-address-lost`,
    ]);
    expect(prepared.diagnostics.find(({ file }) => file === list)?.message).toContain('The old address /teardowns/gone/ has no redirect');
  });

  test('a list longer than any entry may be is read to its end', async () => {
    const content = contentFolder({
      [list]: `${'/teardowns/a/\n'.repeat(30_000)}/teardowns/gone/\n`,
      'teardowns/a/index.md': entryText('A'),
    });
    expect(placesOf(await prepareIn(content)).filter((place) => place.startsWith(list))).toEqual([
      `${list}:30001:1 published-address-lost`,
    ]);
  });

  test('an entry that cannot be read keeps its address: its own findings are enough', async () => {
    const content = contentFolder({ [list]: '/teardowns/a/\n', 'teardowns/a/index.md': 'no frontmatter\n' });
    expect(placesOf(await prepareIn(content)).filter((place) => place.startsWith(list))).toEqual([]);
  });
});
