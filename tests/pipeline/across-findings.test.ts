import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { hasErrors } from '../../src/diagnostics/has-errors.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { openDataPath } from '../../src/pipeline/open-data-path.ts';
import type { DeviceData } from '../../src/corpus/open-data/device-schema.ts';
import { contentFolder, entryText, temporaryFolder, writeFiles } from './content-folder.ts';
import { placesOf, prepareIn } from './run-in.ts';

const withPart = (title: string, part: string, more = ''): string =>
  entryText(title, 'x\n', `stages: { main: flyback }\nparts:\n  main:\n    Q1: ${part}\n${more}`);

const TWO_RATINGS = {
  'teardowns/a/index.md': withPart('A', '{ role: switch, number: NBK-7, rating: "700 V, 140 mΩ" }'),
  'teardowns/b/index.md': withPart('B', '{ role: switch, number: NBK-7, rating: "650 V, 140 mΩ" }'),
};

const ofRule = (prepared: Awaited<ReturnType<typeof prepareIn>>, rule: string): readonly string[] =>
  prepared.diagnostics
    .filter((diagnostic) => diagnostic.rule === rule)
    .map(({ file, line, column, message }) => `${file}:${line}:${column} ${message}`);

describe('one part number with two ratings in two entries', () => {
  test('is a finding at the rating in each, with the place of the other', async () => {
    expect(ofRule(await prepareIn(contentFolder(TWO_RATINGS)), 'part-ratings-differ')).toEqual([
      'teardowns/a/index.md:10:48 Q1: NBK-7 is 700 V, 140 mΩ here and 650 V, 140 mΩ elsewhere (teardowns/b/index.md:10:48).',
      'teardowns/b/index.md:10:48 Q1: NBK-7 is 650 V, 140 mΩ here and 700 V, 140 mΩ elsewhere (teardowns/a/index.md:10:48).',
    ]);
  });

  test('is found again by a run that reads no entry anew, and is in the manifest for the pages', async () => {
    const content = contentFolder(TWO_RATINGS);
    const work = temporaryFolder();
    const run = () => prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
    const first = await run();
    const second = await run();
    expect(second.counts.parsed).toBe(0);
    expect(second.diagnostics).toEqual(first.diagnostics);
    expect(Object.keys(second.manifest.findingsAcross)).toEqual(['a', 'b']);
  });

  test('can be answered by its author', async () => {
    const answer = 'answers:\n  - { to: part-ratings-differ, at: Q1, because: two editions of the data sheet }\n';
    const prepared = await prepareIn(
      contentFolder({
        ...TWO_RATINGS,
        'teardowns/b/index.md': withPart('B', '{ role: switch, number: NBK-7, rating: "650 V, 140 mΩ" }', answer),
      }),
    );
    expect(prepared.diagnostics.filter(({ rule }) => rule === 'part-ratings-differ').map(({ answer: given }) => given)).toEqual([
      null,
      'two editions of the data sheet',
    ]);
    expect(placesOf(prepared).filter((place) => place.includes('answer'))).toEqual([]);
  });

  test('stands in its cell where the part is in a spreadsheet', async () => {
    const prepared = await prepareIn(
      contentFolder({
        ...TWO_RATINGS,
        'teardowns/b/index.md': entryText('B', 'x\n', 'stages: { main: flyback }\nparts: parts.csv\n'),
        'teardowns/b/parts.csv': 'stage,reference,role,number,rating\nmain,Q1,switch,NBK-7,"650 V, 140 mΩ"\n',
      }),
    );
    expect(ofRule(prepared, 'part-ratings-differ').map((words) => words.split(' ')[0])).toEqual([
      'teardowns/a/index.md:10:48',
      'teardowns/b/parts.csv:2:22',
    ]);
  });

  test('a draft takes no part in a build', async () => {
    const draft = TWO_RATINGS['teardowns/b/index.md'].replace('status: published', 'status: draft');
    expect(
      ofRule(await prepareIn(contentFolder({ ...TWO_RATINGS, 'teardowns/b/index.md': draft }), 'build'), 'part-ratings-differ'),
    ).toEqual([]);
  });
});

/** The device file of an entry as it goes into the site. */
function dataOf(prepared: string, slug: string): DeviceData {
  // Written by the run before.
  return JSON.parse(readFileSync(openDataPath(prepared, `teardowns/${slug}/data.json`), 'utf8')) as DeviceData;
}

describe('the fact sheet of a part', () => {
  const FACTS = 'maker: Nembrook\nrating: 700 V, 140 mΩ\npackage: DFN 8×8\n';
  const bare = withPart('A', '{ role: switch, number: NBK-7 }');

  test('gives an entry what it leaves out, as from a data sheet', async () => {
    const work = temporaryFolder();
    const content = contentFolder({ 'teardowns/a/index.md': bare, 'parts/NBK-7.yaml': FACTS });
    const prepared = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
    expect(hasErrors(prepared.diagnostics)).toBe(false);
    const [part] = dataOf(join(work, 'p'), 'a').parts;
    expect([part?.maker, part?.rating, part?.package, part?.evidence]).toEqual(['Nembrook', '700 V, 140 mΩ', 'DFN 8×8', 'datasheet']);
    expect(part?.fromFactSheet).toEqual(['maker', 'package', 'rating']);
    expect(prepared.manifest.sheets[0]?.parts[0]?.rating).toBe('700 V, 140 mΩ');
  });

  test('a correction in it changes every page that it feeds, is listed there, and changes no other entry', async () => {
    const work = temporaryFolder();
    const content = contentFolder({
      'teardowns/a/index.md': bare,
      'teardowns/b/index.md': bare.replace('title: A', 'title: B').replace('name: A', 'name: B'),
      'teardowns/c/index.md': withPart('C', '{ role: switch, number: NBK-8 }'),
      'parts/NBK-7.yaml': FACTS,
    });
    const run = () => prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
    await run();
    const correction =
      'corrections:\n  - { date: 2026-05-02, where: rating, was: "700 V, 140 mΩ", is: "700 V, 150 mΩ", why: second edition }\n';
    writeFiles(content, { 'parts/NBK-7.yaml': FACTS.replace('140', '150') + correction });
    const second = await run();
    expect(second.counts.parsed).toBe(2);
    for (const slug of ['a', 'b']) {
      const { parts, corrections, revision } = dataOf(join(work, 'p'), slug);
      expect(parts[0]?.rating).toBe('700 V, 150 mΩ');
      expect(corrections).toEqual([
        {
          date: '2026-05-02',
          where: 'NBK-7, rating (fact sheet of the part)',
          was: '700 V, 140 mΩ',
          is: '700 V, 150 mΩ',
          why: 'second edition',
        },
      ]);
      expect(revision).toBe('B');
    }
  });

  test('contradicting it is a finding at the rating, with the place in the fact sheet', async () => {
    const content = contentFolder({ 'teardowns/b/index.md': TWO_RATINGS['teardowns/b/index.md'], 'parts/NBK-7.yaml': FACTS });
    expect(ofRule(await prepareIn(content), 'part-against-fact-sheet')).toEqual([
      'teardowns/b/index.md:10:48 Q1: rating 650 V, 140 mΩ contradicts the fact sheet of NBK-7 in voltage: 700 V, 140 mΩ (parts/NBK-7.yaml:2).',
    ]);
  });

  test.each([
    ['maker: [\n', '2:1 part-sheet-invalid'],
    ['color: red\n', '1:1 part-sheet-invalid'],
    ['rating: 700 V\nmaker: {}\n', '2:1 part-sheet-invalid'],
    ['corrections:\n  - { date: May, where: rating }\n', '2:5 part-sheet-invalid'],
    ['rating: 700 V, 10 mm (2 in)\n', '1:16 part-sheet-invalid'],
    ['rating: "700 V, 10 mm (2 in)"\n', '1:17 part-sheet-invalid'],
    ['corrections:\n  - { date: 2026-02-31, where: rating, why: no such day }\n', '2:5 part-sheet-invalid'],
    ['also written: NBK7\n', '1:1 part-sheet-invalid'],
  ])('a fault in it is a finding with its place: %j', async (text, place) => {
    const prepared = await prepareIn(contentFolder({ 'teardowns/a/index.md': bare, 'parts/NBK-7.yaml': text }));
    expect(placesOf(prepared).filter((found) => found.startsWith('parts/'))).toContain(`parts/NBK-7.yaml:${place}`);
  });

  test('one that no entry names is a note, two for one number are an error, and another file is astray', async () => {
    const prepared = await prepareIn(
      contentFolder({
        'teardowns/a/index.md': bare,
        'parts/NBK-9.yaml': FACTS,
        'parts/NBK-7.yaml': FACTS,
        'parts/other.yaml': `number: NBK-7\n`,
        'parts/x.md': 'x',
      }),
    );
    expect(placesOf(prepared).filter((place) => place.startsWith('parts/'))).toEqual([
      'parts/NBK-9.yaml:1:1 part-sheet-unused',
      'parts/other.yaml:1:9 part-sheet-invalid',
      'parts/x.md:1:1 stray-file',
    ]);
  });
});
