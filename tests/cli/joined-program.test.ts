import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, symlinkSync, utimesSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';
import { writeFiles } from '../pipeline/content-folder.ts';

/** More entries than one thread takes. */
const ENTRIES = Object.fromEntries(
  Array.from({ length: 60 }, (_, at) => [`content/teardowns/device-${String(at)}/index.md`, 'No fields\n']),
);

const copy = mkdtempSync(join(tmpdir(), 'seamline-joined-'));
const joined = join(copy, '.cache/program');

function run(...args: string[]): { readonly status: number | null; readonly stdout: string; readonly stderr: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(copy, 'bin/seamline.cjs'), ...args], {
    cwd: copy,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

/** What really ran: every file that the loader opened is told. */
function ranFrom(): string {
  const told = spawnSync(process.execPath, [join(copy, 'bin/seamline.cjs'), '--version'], {
    ...{ cwd: copy, encoding: 'utf8' },
    env: { ...process.env, NODE_DEBUG: 'esm' },
  });
  return told.stderr.includes('.cache/program/main.mjs') ? 'joined' : 'sources';
}

beforeAll(() => {
  for (const each of ['bin', 'src', 'package.json', 'package-lock.json', 'astro.config.mjs'])
    cpSync(join(PROJECT_ROOT, each), join(copy, each), { recursive: true });
  symlinkSync(join(PROJECT_ROOT, 'node_modules'), join(copy, 'node_modules'), 'dir');
  writeFiles(copy, ENTRIES);
  const made = spawnSync(process.execPath, [join(copy, 'bin/join-program.mjs')], { cwd: copy, encoding: 'utf8' });
  expect([made.status, made.stderr]).toEqual([0, '']);
}, 60_000);

afterAll(() => {
  rmSync(copy, { recursive: true, force: true });
});

describe('the program joined into a few files', () => {
  test('has every part that runs in a thread or process of its own', () => {
    const parts = [...readFileSync(join(PROJECT_ROOT, 'src/pipeline/program-part.ts'), 'utf8').matchAll(/'([a-z/-]+)'(?= \||;)/g)];
    expect(parts.length).toBeGreaterThan(2);
    const files = readdirSync(joined);
    for (const [, part = ''] of parts) expect(files).toContain(`${part.slice(part.lastIndexOf('/') + 1)}.mjs`);
  });

  test('says the same as its sources, threads included', () => {
    const fast = run('check', '--content', 'content');
    expect(ranFrom()).toBe('joined');
    renameSync(joined, `${joined}-aside`);
    rmSync(join(copy, '.cache/seamline'), { recursive: true, force: true });
    const fromSources = run('check', '--content', 'content');
    expect(ranFrom()).toBe('sources');
    renameSync(`${joined}-aside`, joined);
    expect(fromSources).toEqual(fast);
    expect([fast.status, fast.stdout]).toEqual([1, expect.stringContaining('60 errors')]);
  }, 60_000);

  test('stands aside once a source has changed', () => {
    expect(ranFrom()).toBe('joined');
    utimesSync(join(copy, 'src/cli/main.ts'), new Date(0), new Date(0));
    expect(ranFrom()).toBe('sources');
  });
});
