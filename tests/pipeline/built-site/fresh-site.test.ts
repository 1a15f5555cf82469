import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshSite, putText, takenOver } from '../../../src/pipeline/built-site/fresh-site.ts';
import { keepOutput, previousOutput } from '../../../src/pipeline/built-site/previous-output.ts';
import { markOutput } from '../../../src/pipeline/output-state.ts';
import { temporaryFolder } from '../content-folder.ts';

/** An output folder with one page and one text, and the cache that remembers it. */
function published(): { readonly out: string; readonly cache: string; readonly work: string } {
  const work = temporaryFolder();
  const out = join(work, 'out');
  const site = freshSite(out, null);
  putText(site, 'a/index.html', 'k1', '<body><p id="x">x</p><a href="/b/">b</a></body>');
  putText(site, 'rows.json', 'k2', '[]');
  keepOutput(join(work, 'cache'), out, markOutput(out, 'key'), site);
  return { out, cache: join(work, 'cache'), work };
}

describe('what the last build wrote', () => {
  test('is taken over where it followed from the same, with what is known of the page', () => {
    const { out, cache, work } = published();
    const site = freshSite(join(work, 'new'), previousOutput(cache, out));
    expect([takenOver(site, 'a/index.html', 'k1'), takenOver(site, 'rows.json', 'other'), takenOver(site, 'c.json', 'k1')]).toEqual([
      true,
      false,
      false,
    ]);
    expect(readFileSync(join(work, 'new/a/index.html'), 'utf8')).toContain('<p id="x">');
    expect(site.facts.get('a/index.html')).toMatchObject({ ids: ' x ', links: '/b/' });
    expect(existsSync(join(work, 'new/rows.json'))).toBe(false);
  });

  test('stands in the new folder when the old one is gone', () => {
    const { out, cache, work } = published();
    const site = freshSite(join(work, 'new'), previousOutput(cache, out));
    takenOver(site, 'rows.json', 'k2');
    rmSync(out, { recursive: true });
    expect(readFileSync(join(work, 'new/rows.json'), 'utf8')).toBe('[]');
  });

  test.each<[string, (out: string) => void]>([
    [
      'edited',
      (out) => {
        writeFileSync(join(out, 'rows.json'), '[1]');
      },
    ],
    [
      'given a further file',
      (out) => {
        writeFileSync(join(out, 'notes.txt'), 'x');
      },
    ],
    [
      'emptied',
      (out) => {
        rmSync(join(out, 'a'), { recursive: true });
      },
    ],
  ])('is not trusted where the folder was %s since', (_, touch) => {
    const { out, cache } = published();
    touch(out);
    expect(previousOutput(cache, out)).toBeNull();
  });

  test('is not trusted where its record cannot be read, and nothing throws', () => {
    const { out, cache } = published();
    expect(previousOutput(cache, out)).not.toBeNull();
    for (const name of readdirSync(join(cache, 'outputs'))) writeFileSync(join(cache, 'outputs', name), 'no record');
    expect(previousOutput(cache, out)).toBeNull();
  });
});
