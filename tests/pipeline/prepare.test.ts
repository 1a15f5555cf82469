import { chmodSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { EntrySteps } from '../../src/pipeline/entry-steps.ts';
import { OWN_STEPS } from '../../src/pipeline/own-steps.ts';
import { hasErrors } from '../../src/diagnostics/has-errors.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { readSheetFile } from '../../src/pipeline/sheet-file.ts';
import { contentFolder, entryText, temporaryFolder, writeFiles } from './content-folder.ts';
import { placesOf, prepareIn } from './run-in.ts';

describe('a content folder', () => {
  test('an empty one gives a site with no sheets and no error', async () => {
    const prepared = await prepareIn(temporaryFolder(), 'build');
    expect(prepared.manifest.sheets).toEqual([]);
    expect(prepared.manifest.site.name).toBe('Teardowns');
    expect(placesOf(prepared)).toEqual(['site.yaml:1:1 site-settings-missing']);
    expect(prepared.diagnostics[0]?.severity).toBe('note');
  });

  test('a published entry without a fault is in the manifest, and its sheet in its file', async () => {
    const content = contentFolder({ 'teardowns/lm-q30/index.md': entryText('LM Q30', 'Some *words*.\n') });
    const work = temporaryFolder();
    const { manifest, diagnostics } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
    expect(hasErrors(diagnostics)).toBe(false);
    expect(manifest.sheets.map((sheet) => [sheet.slug, sheet.title, sheet.status])).toEqual([['lm-q30', 'LM Q30', 'published']]);
    expect(JSON.parse(readFileSync(join(work, 'p/manifest.json'), 'utf8'))).toEqual(manifest);
    const drawn = readSheetFile(join(work, 'p'), 'lm-q30');
    expect(drawn.zones.find((zone) => zone.title === 'On the bench')?.matter).toContain('<p>Some <em>words</em>.</p>');
  });

  test('a check makes nothing for the pages, and the build after it makes what is missing', async () => {
    const content = contentFolder({ 'teardowns/lm-q30/index.md': entryText('LM Q30', 'Some *words*.\n') });
    const work = temporaryFolder();
    const run = (mode: 'check' | 'build') => prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode });
    expect((await run('check')).manifest.sheets).toEqual([]);
    expect(existsSync(join(work, 'p/sheets'))).toBe(false);
    const built = await run('build');
    expect([built.counts.parsed, built.manifest.sheets.length]).toEqual([1, 1]);
    expect((await run('check')).counts.parsed).toBe(0);
    expect((await run('build')).counts.parsed).toBe(0);
  });

  test('one broken entry among fifty: every finding of every file in one run, sorted by file and place', async () => {
    const good = Object.fromEntries(
      Array.from({ length: 47 }, (_, at) => [`teardowns/unit-${String(at + 10)}/index.md`, entryText(`Unit ${String(at)}`)]),
    );
    const content = contentFolder({
      ...good,
      'teardowns/unit-03/index.md': '---\ntitle: [\n---\n',
      'teardowns/unit-01/index.md': entryText('One', 'A :value[nothing].\n\n[x](/teardowns/none/)\n', 'colour: red\n'),
      'teardowns/unit-02/index.md': new Uint8Array([0x2d, 0x2d, 0x2d, 0x0a, 0x61, 0xff]),
    });
    const prepared = await prepareIn(content);
    const places = placesOf(prepared).filter((place) => /unit-0/.test(place));
    expect(places.map((place) => place.split(':')[0])).toEqual(places.map((place) => place.split(':')[0]).sort());
    expect(places.filter((place) => place.startsWith('teardowns/unit-01'))).toEqual([
      expect.stringMatching(/^teardowns\/unit-01\/index.md:7:1 unknown-key/),
      'teardowns/unit-01/index.md:10:3 prose-unknown-name',
      'teardowns/unit-01/index.md:12:1 prose-link-broken',
    ]);
    expect(places).toContainEqual('teardowns/unit-02/index.md:2:2 file-not-utf8');
    expect(places.some((place) => place.startsWith('teardowns/unit-03/index.md:') && place.includes('yaml-syntax'))).toBe(true);
    expect(prepared.diagnostics.filter((diagnostic) => /unit-[1-5]/.test(diagnostic.file) && diagnostic.severity === 'error')).toEqual([]);
    expect(prepared.counts).toMatchObject({ entries: 50 });
  });
});

describe('files that cannot be entries', () => {
  test.each<[string, Uint8Array | string, string]>([
    ['larger than 256 KB', `---\ntitle: x\n---\n${'x'.repeat(256 * 1024)}`, '1:1 file-too-large'],
    ['empty', '', '1:1 empty-entry'],
    ['blank', '\n \n', '1:1 empty-entry'],
    ['Latin-1', new Uint8Array([0x2d, 0x2d, 0x2d, 0x0a, 0x74, 0x3a, 0x20, 0xb5, 0x0a]), '2:4 file-not-utf8'],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x2d, 0x00]), '1:1 file-not-utf8'],
  ])('%s', async (_, bytes, place) => {
    const prepared = await prepareIn(contentFolder({ 'teardowns/a/index.md': bytes }));
    expect(placesOf(prepared)).toEqual([`teardowns/a/index.md:${place}`]);
    expect(hasErrors(prepared.diagnostics)).toBe(true);
  });

  // Root can read every file, whatever its mode says.
  test.skipIf(process.getuid?.() === 0)('not to be read', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A') });
    chmodSync(join(content, 'teardowns/a/index.md'), 0);
    expect(placesOf(await prepareIn(content))).toEqual(['teardowns/a/index.md:1:1 file-unreadable']);
  });

  test.each(['teardowns', 'parts', 'policies'])('a file called %s, where a folder belongs', async (name) => {
    expect(placesOf(await prepareIn(contentFolder({ [name]: 'x' })))).toContain(`${name}:1:1 file-unreadable`);
  });

  test.each(['site.yaml', 'bench.yaml', 'published-addresses.txt'])('a folder called %s, where a file belongs', async (name) => {
    const content = temporaryFolder();
    writeFiles(content, { 'teardowns/a/index.md': entryText('A'), [`${name}/x`]: 'x' });
    expect(placesOf(await prepareIn(content))).toContain(`${name}:1:1 file-unreadable`);
  });

  test('a folder called index.md', async () => {
    expect(placesOf(await prepareIn(contentFolder({ 'teardowns/a/index.md/x': 'x' })))).toEqual([
      'teardowns/a/index.md:1:1 file-unreadable',
    ]);
  });

  test('a byte order mark is no fault, and lines ending with CR LF keep their places', async () => {
    const text = entryText('A', 'One.\n\n:value[x]\n');
    const plain = placesOf(await prepareIn(contentFolder({ 'teardowns/a/index.md': text })));
    expect(plain).toEqual(['teardowns/a/index.md:11:1 prose-unknown-name']);
    expect(placesOf(await prepareIn(contentFolder({ 'teardowns/a/index.md': `\uFEFF${text}` })))).toEqual(plain);
    expect(placesOf(await prepareIn(contentFolder({ 'teardowns/a/index.md': text.replaceAll('\n', '\r\n') })))).toEqual(plain);
  });
});

describe('drafts', () => {
  const draft = entryText('Quillfeather').replace('status: published\npublished: 2026-03-14\n', 'status: draft\n');

  test('a draft is checked, and is nowhere in what is published', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A'), 'teardowns/b/index.md': draft });
    const work = temporaryFolder();
    const { manifest, counts } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
    expect(counts.drafts).toBe(1);
    expect(manifest.sheets.map((sheet) => sheet.slug)).toEqual(['a']);
    expect(JSON.stringify(manifest)).not.toContain('Quillfeather');
  });

  test('while writing it is shown, and said to be a draft', async () => {
    const { manifest } = await prepareIn(contentFolder({ 'teardowns/b/index.md': draft }), 'dev');
    expect(manifest.sheets.map((sheet) => [sheet.slug, sheet.status])).toEqual([['b', 'draft']]);
  });

  test('a link to a draft is an error when building, and none while writing', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A', 'See [b](../b/).\n'), 'teardowns/b/index.md': draft });
    expect(placesOf(await prepareIn(content, 'build'))).toEqual(['teardowns/a/index.md:9:5 prose-link-draft']);
    expect(placesOf(await prepareIn(content, 'dev'))).toEqual([]);
  });
});

describe('a step of this program that fails', () => {
  const failing = (change: (steps: EntrySteps) => Partial<EntrySteps>): EntrySteps => ({ ...OWN_STEPS, ...change(OWN_STEPS) });
  const throws = (): never => {
    throw new TypeError('x is undefined\n    at somewhere');
  };

  test.each<[string, EntrySteps]>([
    ['check made-up', failing((steps) => ({ checks: [...steps.checks, { id: 'made-up', run: throws }] }))],
    ['table made-up', failing((steps) => ({ tables: [...steps.tables, { id: 'made-up', run: throws }] }))],
    ['derived', failing(() => ({ derive: throws }))],
    ['entry', failing(() => ({ read: throws }))],
    ['frontmatter', failing(() => ({ split: throws }))],
    ['places', failing(() => ({ place: throws }))],
  ])('%s: becomes one finding that names it, and all other findings stay', async (name, steps) => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A'), 'teardowns/b/index.md': '' });
    const { diagnostics } = await prepareIn(content, 'check', steps);
    const faults = diagnostics.filter((diagnostic) => diagnostic.rule === 'internal-fault' && diagnostic.file === 'teardowns/a/index.md');
    expect(faults.map(({ severity, message }) => [severity, message])).toEqual([
      ['error', `The step "${name}" failed on this entry: x is undefined`],
    ]);
  });
});

describe('the second run', () => {
  async function twice(change: (content: string, work: string) => void): Promise<{ readonly parsed: number; readonly same: boolean }> {
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', 'x\n', 'parts: parts.csv\n'),
      'teardowns/a/parts.csv': 'stage,reference,role\n',
      'teardowns/b/index.md': entryText('B', '[a](../a/)\n'),
    });
    const work = temporaryFolder();
    const options = { content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' } as const;
    const first = await prepare(options);
    expect(first.counts.parsed).toBe(2);
    change(content, work);
    const second = await prepare(options);
    return {
      parsed: second.counts.parsed,
      same: JSON.stringify([first.manifest, first.diagnostics]) === JSON.stringify([second.manifest, second.diagnostics]),
    };
  }

  test('parses nothing when nothing changed, and says the same', async () => {
    expect(await twice(() => undefined)).toEqual({ parsed: 0, same: true });
  });

  test('parses the entry that changed, the one whose parts file changed, and the one whose sheet is gone', async () => {
    expect(
      await twice((content) => {
        writeFileSync(join(content, 'teardowns/b/index.md'), entryText('B', '[a](../a/) y\n'));
      }),
    ).toEqual({ parsed: 1, same: false });
    expect(
      await twice((content) => {
        writeFileSync(join(content, 'teardowns/a/parts.csv'), 'stage,reference,role\n\n');
      }),
    ).toMatchObject({ parsed: 1 });
    expect(
      await twice((_, work) => {
        rmSync(join(work, 'p/sheets/a.sheet'));
      }),
    ).toEqual({ parsed: 1, same: true });
    expect(
      await twice((_, work) => {
        for (const shelf of readdirSync(join(work, 'c/records'))) writeFileSync(join(work, 'c/records', shelf), '{"version":"');
      }),
    ).toEqual({ parsed: 2, same: true });
  });

  test('finds the link that broke when another entry went, without parsing the one that holds it', async () => {
    expect(
      await twice((content) => {
        rmSync(join(content, 'teardowns/a'), { recursive: true });
      }),
    ).toEqual({ parsed: 0, same: false });
  });

  test('leaves files alone whose bytes are the same, and drops sheets of entries that are gone', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A'), 'teardowns/b/index.md': entryText('B') });
    const work = temporaryFolder();
    const options = { content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' } as const;
    await prepare(options);
    const before = statSync(join(work, 'p/sheets/a.sheet'), { bigint: true }).ino;
    rmSync(join(content, 'teardowns/b'), { recursive: true });
    rmSync(join(work, 'c'), { recursive: true });
    await prepare(options);
    expect(statSync(join(work, 'p/sheets/a.sheet'), { bigint: true }).ino).toBe(before);
    expect(readdirSync(join(work, 'p/sheets'))).toEqual(['a.sheet']);
    expect(existsSync(join(work, 'p/sheets/b.sheet'))).toBe(false);
  });
});

describe('many entries', () => {
  test('are prepared in workers, with the same bytes as in one thread', async () => {
    const files = Object.fromEntries(
      Array.from({ length: 60 }, (_, at) => [
        `teardowns/unit-${String(at + 10)}/index.md`,
        entryText(`Unit ${String(at)}`, `Text ${String(at)} :value[x].\n`),
      ]),
    );
    const content = contentFolder(files);
    const [one, other] = [temporaryFolder(), temporaryFolder()];
    const seen: number[] = [];
    const inWorkers = await prepare({
      content,
      prepared: join(one, 'p'),
      cache: join(one, 'c'),
      mode: 'build',
      onProgress: (done) => seen.push(done),
    });
    const inThread = await prepare({ content, prepared: join(other, 'p'), cache: join(other, 'c'), mode: 'build', steps: OWN_STEPS });
    expect(inWorkers).toEqual(inThread);
    expect(seen.at(-1)).toBe(60);
    for (const name of readdirSync(join(one, 'p/sheets'))) {
      expect(readFileSync(join(one, 'p/sheets', name))).toEqual(readFileSync(join(other, 'p/sheets', name)));
    }
  });
});

test('nothing of the content can name a file outside the prepared folder', async () => {
  const content = contentFolder({});
  writeFiles(content, { 'teardowns/a/index.md': entryText('A') });
  const work = temporaryFolder();
  await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
  expect(readdirSync(work).sort()).toEqual(['c', 'p']);
});
