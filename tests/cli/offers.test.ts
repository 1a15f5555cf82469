import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/cli/run-command.ts';
import { CAPABILITY_SETS } from '../usb-pd/capability-sets.ts';
import { WORD_VECTORS } from '../usb-pd/word-vectors.ts';

async function offers(...argv: readonly string[]): Promise<{ readonly code: number; readonly stdout: string; readonly stderr: string }> {
  const said = { stdout: '', stderr: '' };
  const sink = (name: 'stdout' | 'stderr'): { write: (text: string) => void; isTTY: boolean } => ({
    write: (text) => void (said[name] += text),
    isTTY: false,
  });
  const code = await runCommand(['offers', ...argv], { stdout: sink('stdout'), stderr: sink('stderr'), cwd: '/', env: {} });
  return { code, ...said };
}

function hex(word: number): string {
  return `0x${word.toString(16).toUpperCase().padStart(8, '0')}`;
}

describe('words on the command line', () => {
  test.each(CAPABILITY_SETS.map(({ id, words }) => [id, words] as const))(
    '%s decodes word by word as its source states',
    async (_id, words) => {
      const { stdout, code } = await offers(...words.map(hex), '--format', 'json');
      const stated = words.map((word) => ({
        word: hex(word),
        ...(WORD_VECTORS.find((vector) => vector.word === word)?.object ?? { kind: 'empty' }),
      }));
      expect(JSON.parse(stdout)).toEqual(stated);
      expect(code).toBe(0);
    },
  );

  test('are listed with place, kind and watts, EPR from place 8', async () => {
    const { stdout } = await offers(
      '0x0881912C',
      '0x0002D12C',
      '0x0004B12C',
      '0x000641F4',
      '0x0',
      '0x0',
      '0x0',
      '0x0008C1F4',
      '0xD230968C',
      '--power',
      '140',
      '--cable',
      'EPR',
    );
    expect(stdout).toBe(
      [
        '1  0x0881912C  fixed    5 V 3 A, 15 W',
        '2  0x0002D12C  fixed    9 V 3 A, 27 W',
        '3  0x0004B12C  fixed    15 V 3 A, 45 W',
        '4  0x000641F4  fixed    20 V 5 A, 100 W',
        '8  0x0008C1F4  fixed    28 V 5 A, 140 W',
        '9  0xD230968C  EPR AVS  15–28 V, 140 W',
        '',
      ].join('\n'),
    );
  });

  test('are judged with what is known of the port', async () => {
    const { stdout, code } = await offers('0x0801912C', '0x0002D12C', '--power', '45 W', '--revision', '3.2', '--cable', 'marked');
    expect(stdout).toContain('warning required-offers');
    expect(stdout).toContain('No fixed 15 V: a source of 45 W must offer it with 3 A.');
    expect(stdout).toContain('0 errors');
    expect(code).toBe(0);
  });
});

describe('text on the command line', () => {
  test('gets the word that would carry it', async () => {
    const { stdout } = await offers('5V 3A, 9V 2.22A, PPS 5-11V 2.2A', '--format', 'json');
    expect((JSON.parse(stdout) as { word: string }[]).map(({ word }) => word)).toEqual(['0x0001912C', '0x0002D0DE', '0xC0DC322C']);
  });

  test('a twin is told at its own place, and 5 V 3 A is not looked for inside 15 V 3 A', async () => {
    const { stdout } = await offers('15 V 3 A, 5 V 3 A, 5 V 3 A');
    expect(stdout).toMatch(/^offers:1:20 warning offer-twice$/m);
  });

  test('a revision that is none is wrong usage', async () => {
    expect((await offers('5 V 3 A', '--revision', '3.1abc')).code).toBe(2);
    expect((await offers('5 V 3 A', '--revision', '3.2 V1.1')).code).toBe(0);
  });

  test('that no object can carry has none', async () => {
    const { stdout } = await offers('5V 12A', '--format', 'json');
    expect(JSON.parse(stdout)).toMatchObject([{ word: null, kind: 'fixed', current_mA: 12_000 }]);
  });
});

describe('exit codes', () => {
  test.each([
    [['0x0801912C', '0x0002D12C'], 0],
    [['0x0002D12C', '0x0801912C'], 1],
    [['0x0801912G'], 1],
    [['2C91010A', '2CD10200'], 1],
    [['nonsense'], 1],
    [[], 2],
    [['0x0801912C', '--format', 'sarif'], 2],
    [['0x0801912C', '--power', 'much'], 2],
    [['0x0801912C', '--cable', 'thick'], 2],
    [['0x0801912C', '--revision', 'new'], 2],
  ])('%j: %d', async (argv, expected) => {
    const { code, stdout, stderr } = await offers(...argv);
    expect(code).toBe(expected);
    expect(stdout + stderr).not.toMatch(/\n\s+at /);
  });

  test('json stays an array, with what is wrong beside it', async () => {
    const { stdout, stderr } = await offers('0x0801912G', '--format', 'json');
    expect(JSON.parse(stdout)).toEqual([]);
    expect(stderr).toContain('“G” is no hex digit');
  });
});
