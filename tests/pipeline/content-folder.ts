import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder that is gone when the test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'seamline-test-'));
  onTestFinished(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  return folder;
}

/** Files by path from `folder`. */
export function writeFiles(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  for (const [path, bytes] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
}

/** A content folder with these files, and a site.yaml unless they bring one. */
export function contentFolder(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = temporaryFolder();
  writeFiles(folder, { 'site.yaml': 'name: Test bench\naddress: https://example.org/\n', ...files });
  return folder;
}

/** A published entry that has nothing wrong with it, with more lines of data and with text. */
export function entryText(title: string, text = 'Nothing to say.\n', more = ''): string {
  return `---\ntitle: ${title}\nstatus: published\npublished: 2026-03-14\nsummary: A 30 W wall charger.\ndevice: { maker: Larkmoor, name: ${title}, kind: wall charger }\n${more}---\n\n${text}`;
}
