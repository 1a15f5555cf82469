import { mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBench } from '../../src/pipeline/read-bench.ts';
import { readPartFacts } from '../../src/pipeline/read-part-facts.ts';
import { readPolicies } from '../../src/pipeline/read-policies.ts';
import { readSettings } from '../../src/pipeline/read-settings.ts';
import { scanContent } from '../../src/pipeline/scan-content.ts';
import type { FileFinding } from '../../src/pipeline/pipeline-rule.ts';
import { contentFolder, temporaryFolder, writeFiles } from './content-folder.ts';

/** A content folder in which `name` is a link to `target`, as that is named from within the folder. */
function linked(name: string, target: string): string {
  const content = contentFolder({ 'kept/plain.yaml': '' });
  mkdirSync(dirname(join(content, name)), { recursive: true });
  rmSync(join(content, name), { force: true });
  symlinkSync(resolve(content, target), join(content, name));
  return content;
}

function rulesOf(findings: readonly FileFinding[]): readonly string[] {
  return findings.map(({ file, finding }) => `${file} ${finding.rule}`);
}

/** A folder of somebody else. */
function elsewhere(): string {
  const folder = temporaryFolder();
  writeFiles(folder, { 'secret.yaml': 'name: Somebody else', 'folder/x.yaml': 'name: x' });
  return folder;
}

const READ: Readonly<Record<string, (content: string) => readonly FileFinding[]>> = {
  'site.yaml': (content) => readSettings(content).findings,
  'bench.yaml': (content) => readBench(content).findings,
  'parts/AB-1.yaml': (content) => readPartFacts(content).findings,
  'policies/lines.yaml': (content) => readPolicies(content).findings,
  parts: (content) => readPartFacts(content).findings,
  policies: (content) => readPolicies(content).findings,
  teardowns: (content) => scanContent(content).findings,
};

describe.each(Object.entries(READ))('a symbolic link in the place of %s', (name, read) => {
  const target = /yaml$/.test(name) ? 'secret.yaml' : 'folder';

  test('that leads out of the content folder is refused, and nothing behind it is read', () => {
    expect(rulesOf(read(linked(name, join(elsewhere(), target))))).toEqual([`${name} link-outside-content`]);
  });

  test('that leads nowhere is told of and not taken for absent', () => {
    expect(rulesOf(read(linked(name, join(elsewhere(), 'nothing-here'))))).toEqual([`${name} file-unreadable`]);
  });

  test('that stays within is followed', () => {
    const content = linked(name, /yaml$/.test(name) ? 'kept/plain.yaml' : 'kept');
    expect(rulesOf(read(content)).filter((words) => /link-outside|unreadable/.test(words))).toEqual([]);
  });
});
