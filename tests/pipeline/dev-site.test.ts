import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { watchContent } from '../../src/pipeline/dev-site.ts';
import { contentFolder, entryText, writeFiles } from './content-folder.ts';

describe('while an entry is being written', () => {
  test('a burst of changes is one reading, a later one is another, new and removed folders count, and stopping stops', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A') });
    let readings = 0;
    const stop = watchContent(content, () => {
      readings += 1;
      return Promise.resolve();
    });
    onTestFinished(stop);
    for (let at = 0; at < 5; at += 1) writeFileSync(join(content, 'teardowns/a/index.md'), entryText(`A${String(at)}`));
    await vi.waitFor(() => {
      expect(readings).toBe(1);
    }, 5000);
    writeFiles(content, { 'teardowns/b/index.md': entryText('B') });
    await vi.waitFor(() => {
      expect(readings).toBeGreaterThanOrEqual(2);
    }, 5000);
    const before = readings;
    rmSync(join(content, 'teardowns/b'), { recursive: true });
    await vi.waitFor(() => {
      expect(readings).toBeGreaterThan(before);
    }, 5000);
    stop();
    const after = readings;
    writeFileSync(join(content, 'site.yaml'), 'name: B\n');
    await new Promise((waited) => setTimeout(waited, 400));
    expect(readings).toBe(after);
  });

  test('changes during a reading are read when it has ended, never beside it', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A') });
    let [running, most, readings] = [0, 0, 0];
    const stop = watchContent(content, async () => {
      readings += 1;
      running += 1;
      most = Math.max(most, running);
      if (readings === 1) writeFileSync(join(content, 'teardowns/a/index.md'), entryText('Changed'));
      await new Promise((waited) => setTimeout(waited, 400));
      running -= 1;
    });
    onTestFinished(stop);
    writeFileSync(join(content, 'teardowns/a/index.md'), entryText('First'));
    await vi.waitFor(() => {
      expect(readings).toBe(2);
    }, 5000);
    expect(most).toBe(1);
  });
});
