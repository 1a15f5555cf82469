import { spawn, spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { temporaryFolder, writeFiles } from '../pipeline/content-folder.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const PROGRAM = join(ROOT, 'bin/seamline.cjs');
const VERSION = (JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { readonly version: string }).version;
const hasOwnNode = ((): boolean => {
  try {
    return createRequire(import.meta.url).resolve(`node-${process.platform}-${process.arch}/package.json`) !== '';
  } catch {
    return false;
  }
})();

/** A file that makes a Node say that it is another one; `-r` loads it first. */
function pretending(version: string, arch: string = process.arch): string {
  const folder = temporaryFolder();
  writeFiles(folder, {
    'pretend.cjs': `if (process.argv[1].endsWith('seamline.cjs')) {\n  Object.defineProperty(process, 'version', { value: '${version}' });\n  Object.defineProperty(process, 'arch', { value: '${arch}' });\n}\n`,
  });
  return join(folder, 'pretend.cjs');
}

describe('the preflight', () => {
  test('is written so that a very old Node can read it', () => {
    const text = readFileSync(PROGRAM, 'utf8');
    expect(text).not.toMatch(/\b(?:const|let|class|async|await)\b|=>|\?\.|\?\?|`/);
  });

  test.each(['v22.18.0', 'v24.0.0', 'v100.1.0'])('%s is new enough and runs the program itself', (version) => {
    const run = spawnSync(process.execPath, ['-r', pretending(version, 'none'), PROGRAM, '--version'], { encoding: 'utf8' });
    expect([run.status, run.stdout, run.stderr]).toEqual([0, `${VERSION}\n`, '']);
  });

  // The package that carries a Node is optional: on a platform it is not made for, there is nothing to hand over to (the next test).
  test.skipIf(!hasOwnNode).each(['v20.0.0', 'v22.17.9', 'v9.9.9'])(
    '%s hands over to the Node that came with the package, exit code included',
    (version) => {
      const preload = pretending(version);
      const good = spawnSync(process.execPath, ['-r', preload, PROGRAM, '--version'], { encoding: 'utf8' });
      expect([good.status, good.stdout, good.stderr]).toEqual([0, `${VERSION}\n`, '']);
      const wrong = spawnSync(process.execPath, ['-r', preload, PROGRAM, 'chekc'], { encoding: 'utf8' });
      expect([wrong.status, wrong.stderr]).toEqual([2, 'There is no command "chekc"; did you mean "check"?\n']);
    },
  );

  test('an old Node on a platform without one says which is needed', () => {
    const run = spawnSync(process.execPath, ['-r', pretending('v20.0.0', 'abacus'), PROGRAM, '--version'], { encoding: 'utf8' });
    expect(run.status).toBe(1);
    expect(run.stderr).toBe(
      `seamline needs Node 22.18 or newer; this is v20.0.0, and no newer one came with the package for ${process.platform} abacus. Install a newer Node, or run "npm ci" without leaving out optional packages.\n`,
    );
  });
});

test('a reader who leaves in the middle is no fault', async () => {
  const child = spawn(process.execPath, [PROGRAM, 'schema'], { stdio: ['ignore', 'pipe', 'pipe'] });
  let complaint = '';
  child.stderr.on('data', (chunk: Buffer) => (complaint += chunk.toString()));
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((ended) => child.on('close', ended));
  expect([code, complaint]).toEqual([0, '']);
});
