import { mkdirSync, readdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildSite, type BuildOutcome } from '../../src/pipeline/build-site.ts';
import { OUTPUT_MARK } from '../../src/pipeline/folder-swap.ts';
import type { BuiltSite, SiteBuilder } from '../../src/pipeline/site-builder.ts';
import { contentFolder, entryText, temporaryFolder, writeFiles } from './content-folder.ts';

/** Every file of a folder with its bytes and its time of change. */
function pictureOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => {
      const stat = statSync(join(folder, name));
      return `${name} ${String(stat.mtimeMs)} ${stat.isFile() ? readFileSync(join(folder, name), 'hex') : ''}`;
    });
}

/** Nothing is known of the pages: they are read when the site is looked over. */
const UNREAD: BuiltSite = { keys: new Map(), facts: new Map() };

/** A builder that writes a page for the home and one for each sheet, changed as a test needs it. */
function writingBuilder(pages: Readonly<Record<string, string>> = {}): SiteBuilder {
  return ({ prepared, folder }) => {
    const { sheets } = JSON.parse(readFileSync(join(prepared, 'manifest.json'), 'utf8')) as {
      readonly sheets: readonly { readonly slug: string }[];
    };
    const files = Object.fromEntries(sheets.map(({ slug }) => [`teardowns/${slug}/index.html`, '<body><h1>x</h1></body>']));
    writeFiles(folder, { 'index.html': '<body>home</body>', ...files, ...pages });
    return Promise.resolve(UNREAD);
  };
}

/** A builder that writes these pages and nothing else. */
function bareBuilder(pages: Readonly<Record<string, string>>): SiteBuilder {
  return ({ folder }) => {
    writeFiles(folder, pages);
    return Promise.resolve(UNREAD);
  };
}

async function buildOver(
  published: Readonly<Record<string, string>>,
  content: string,
  builder: SiteBuilder,
): Promise<{ readonly outcome: BuildOutcome; readonly kept: boolean; readonly beside: readonly string[] }> {
  const work = temporaryFolder();
  const out = join(work, 'site', 'dist');
  mkdirSync(out, { recursive: true });
  writeFiles(out, published);
  const before = pictureOf(out);
  const outcome = await buildSite({ content, out, base: '/', prepared: join(work, 'p'), cache: join(work, 'c'), builder });
  return { outcome, kept: JSON.stringify(pictureOf(out)) === JSON.stringify(before), beside: readdirSync(join(work, 'site')) };
}

const PUBLISHED = { 'index.html': '<body>what was published</body>', 'a/b.html': 'x', [OUTPUT_MARK]: '' };
const GOOD = { 'teardowns/a/index.md': entryText('A') };

describe('a build that fails leaves the published folder byte for byte as it was', () => {
  test('errors in the content', async () => {
    const { outcome, kept, beside } = await buildOver(PUBLISHED, contentFolder({ ...GOOD, 'teardowns/b/index.md': '' }), writingBuilder());
    expect([outcome.ended, kept, beside]).toEqual(['errors in content', true, ['dist']]);
  });

  test('a builder that throws, with half a site written', async () => {
    const builder: SiteBuilder = ({ folder }) => {
      writeFileSync(join(folder, 'index.html'), 'half');
      return Promise.reject(new Error('the template of the parts page failed'));
    };
    const { outcome, kept, beside } = await buildOver(PUBLISHED, contentFolder(GOOD), builder);
    expect(outcome).toMatchObject({ ended: 'pages failed', reason: 'the template of the parts page failed' });
    expect([kept, beside]).toEqual([true, ['dist']]);
  });

  test.each<[string, SiteBuilder, string]>([
    ['a broken link', writingBuilder({ 'x/index.html': '<body><a href="/none/">x</a></body>' }), 'The link "/none/" leads nowhere'],
    ['an id twice', writingBuilder({ 'x/index.html': '<body><p id="a"></p><p id="a">x</p></body>' }), 'The id "a" stands twice'],
    ['a sheet without a body', writingBuilder({ 'teardowns/a/index.html': '<body></body>' }), 'The page has no body'],
    ['a sheet without a page', bareBuilder({ 'index.html': '<body>home</body>' }), 'This teardown has no page'],
    ['no home page', bareBuilder({ 'teardowns/a/index.html': '<body>x</body>' }), 'The site has no home page'],
  ])('%s', async (_, builder, message) => {
    const { outcome, kept, beside } = await buildOver(PUBLISHED, contentFolder(GOOD), builder);
    expect(outcome.ended === 'faults in output' ? outcome.faults.map((fault) => fault.message) : outcome.ended).toEqual([message]);
    expect([kept, beside]).toEqual([true, ['dist']]);
  });

  test('a folder that this program did not write is refused before anything is read', async () => {
    const { outcome, kept } = await buildOver({ 'diary.txt': 'mine' }, contentFolder(GOOD), writingBuilder());
    expect([outcome.ended, kept]).toEqual(['output refused', true]);
  });
});

describe('a build that succeeds', () => {
  test('replaces the folder as a whole', async () => {
    const { outcome, kept, beside } = await buildOver(PUBLISHED, contentFolder(GOOD), writingBuilder());
    expect([outcome.ended, kept, beside]).toEqual(['published', false, ['dist']]);
  });

  test('makes the folder where there is none, and can be repeated', async () => {
    const work = temporaryFolder();
    const options = {
      content: contentFolder(GOOD),
      out: join(work, 'deep/dist'),
      base: '/',
      prepared: join(work, 'p'),
      cache: join(work, 'c'),
      builder: writingBuilder(),
    };
    expect((await buildSite(options)).ended).toBe('published');
    const first = readdirSync(options.out, { recursive: true, encoding: 'utf8' }).sort();
    expect((await buildSite(options)).ended).toBe('published');
    expect(readdirSync(options.out, { recursive: true, encoding: 'utf8' }).sort()).toEqual(first);
    expect(first).toContain('teardowns/a/index.html');
  });

  test('lists its addresses beside the entries, keeps what stands there, and is stopped when one of them is lost', async () => {
    const content = contentFolder(GOOD);
    const list = join(content, 'published-addresses.txt');
    await buildOver({}, content, writingBuilder());
    expect(readFileSync(list, 'utf8')).toMatch(/^#.+\n\/teardowns\/a\/\n$/);
    const first = readFileSync(list, 'utf8');
    writeFiles(content, { 'teardowns/b/index.md': entryText('B') });
    await buildOver({}, content, writingBuilder());
    expect(readFileSync(list, 'utf8')).toBe(`${first}/teardowns/b/\n`);
    renameSync(join(content, 'teardowns/a'), join(content, 'teardowns/a-renamed'));
    expect((await buildOver({}, content, writingBuilder())).outcome.ended).toBe('errors in content');
    writeFiles(content, { 'teardowns/a-renamed/index.md': entryText('A', 'x\n', 'former addresses: [/teardowns/a/]\n') });
    expect((await buildOver({}, content, writingBuilder())).outcome.ended).toBe('published');
  });

  test('an empty content folder is a site too', async () => {
    const { outcome } = await buildOver({}, contentFolder({}), writingBuilder());
    expect(outcome.ended).toBe('published');
  });
});

describe('a build of what is published already', () => {
  const counting = (): { readonly builder: SiteBuilder; readonly runs: () => number } => {
    let runs = 0;
    const write = writingBuilder();
    return {
      builder: (request) => {
        runs += 1;
        return write(request);
      },
      runs: () => runs,
    };
  };
  const twice = async (
    between: (content: string, out: string) => void,
  ): Promise<{ readonly runs: number; readonly unchanged: unknown }> => {
    const work = temporaryFolder();
    const content = contentFolder(GOOD);
    const out = join(work, 'dist');
    const { builder, runs } = counting();
    const options = { content, out, base: '/', prepared: join(work, 'p'), cache: join(work, 'c'), builder, keepUnchanged: true };
    await buildSite(options);
    between(content, out);
    const second = await buildSite(options);
    return { runs: runs(), unchanged: second.ended === 'published' && second.unchanged };
  };

  test('makes no page anew', async () => {
    expect(await twice(() => undefined)).toEqual({ runs: 1, unchanged: true });
  });

  test('makes the pages anew when the content or the published folder was changed', async () => {
    expect(
      await twice((content) => {
        writeFiles(content, { 'teardowns/a/index.md': entryText('A', 'More.\n') });
      }),
    ).toEqual({ runs: 2, unchanged: false });
    expect(
      await twice((_, out) => {
        writeFiles(out, { 'index.html': '<body>edited by hand</body>' });
      }),
    ).toEqual({ runs: 2, unchanged: false });
  });
});
