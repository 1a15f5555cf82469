import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/cli/run-command.ts';
import { contentFolder, entryText, temporaryFolder } from '../pipeline/content-folder.ts';

interface Said {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command line in a folder of its own unless one is given. */
async function seamline(argv: readonly string[], cwd: string = temporaryFolder(), isTTY = false): Promise<Said> {
  const said = { stdout: '', stderr: '' };
  const sink = (name: 'stdout' | 'stderr'): { write: (text: string) => void; isTTY: boolean } => ({
    write: (text) => void (said[name] += text),
    isTTY,
  });
  const code = await runCommand(argv, { stdout: sink('stdout'), stderr: sink('stderr'), cwd, env: {} });
  return { code, ...said };
}

describe('wrong usage ends with 2 and says what would be right', () => {
  test.each([
    [['chekc'], 'There is no command "chekc"; did you mean "check"?'],
    [['frobnicate'], 'there are new, check, build, dev, demo, explain, offers, schema'],
    [['check', '--contnet', 'x'], '"check" has no option --contnet; did you mean "--content"?'],
    [['check', '--out', 'x'], '"check" has no option --out; it takes --content, --format'],
    [['schema', '--x'], '"schema" has no option --x; it takes no options'],
    [['check', '--content'], '--content must be written as --content DIR'],
    [['check', 'somewhere'], '"somewhere" is one word too many'],
    [['check', '--content', 'nowhere'], 'There is no content folder'],
    [['check', '--format', 'jsno'], '--format must be text, json or sarif, not "jsno"; did you mean "json"?'],
    [['build', '--base', 'https://example.org/'], '--base must be the path'],
    [['build', '--base', '/a b/'], '--base must be the path'],
    [['build', '--base', '/../'], '--base must be the path'],
    [['demo', '--port', '70000'], '--port must be a number from 0 to 65535, not "70000"'],
    [['demo', '--port', 'http'], '--port must be a number'],
    [['demo', '--no-serve=yes'], '--no-serve must be written as --no-serve'],
    [['explain'], '<rule or formula> is missing'],
    [['explain', 'stored-enrgy'], 'There is no rule or formula "stored-enrgy"; did you mean "stored-energy"?'],
    [['new'], '<slug> is missing'],
    [['new', 'LM Q100'], 'did you mean "lm-q100"?'],
    [['new', '../x'], '"../x" does not make an address'],
    [['help', 'chekc'], 'did you mean "check"?'],
  ])('%j', async (argv, message) => {
    const { code, stdout, stderr } = await seamline(argv);
    expect(stderr).toContain(message);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('no command at all: the list of them', async () => {
    const { code, stderr } = await seamline([]);
    expect(code).toBe(2);
    expect(stderr).toContain('check, computed'.slice(0, 5));
    expect(stderr).toContain('demo');
  });
});

describe('help', () => {
  test.each([[['--help']], [['help']], [['-h']], [['help', 'check']], [['build', '--help']]])('%j ends with 0', async (argv) => {
    const { code, stdout, stderr } = await seamline(argv);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('seamline');
  });

  test('of a command names every option that it takes', async () => {
    expect((await seamline(['help', 'build'])).stdout).toMatch(/--content DIR[\s\S]*--out DIR[\s\S]*--base \/sub\//);
  });

  test('the version is that of the package', async () => {
    const stated = JSON.parse(readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8')) as { readonly version: string };
    expect(await seamline(['--version'])).toEqual({ code: 0, stdout: `${stated.version}\n`, stderr: '' });
  });
});

describe('check', () => {
  const broken = contentFolderFiles();

  function contentFolderFiles(): Record<string, string> {
    return { 'teardowns/a/index.md': entryText('A', 'A :value[nothing].\n'), 'teardowns/b/index.md': entryText('B') };
  }

  test('ends with 0 when there is no error, with 1 when there is one', async () => {
    expect((await seamline(['check', '--content', contentFolder({ 'teardowns/b/index.md': entryText('B') })])).code).toBe(0);
    expect((await seamline(['check', '--content', contentFolder(broken)])).code).toBe(1);
    expect((await seamline(['check', '--content', contentFolder({})])).code).toBe(0);
  });

  test('as text: place, quoted line with a pointer, why, what to do, and a count', async () => {
    const { stdout, stderr } = await seamline(['check', '--content', contentFolder(broken)]);
    expect(stdout).toMatch(/teardowns\/a\/index\.md:9:3 error prose-unknown-name/);
    expect(stdout).toContain('9 | A :value[nothing].');
    expect(stdout).toContain('why: ');
    expect(stdout).toContain('what to do: ');
    expect(stdout).toContain('1 error, ');
    expect(stdout).toContain('2 entries checked');
    expect(stderr).toBe('');
  });

  test('paths are those from where the command was given', async () => {
    const content = contentFolder(broken);
    expect((await seamline(['check', '--content', '.'], content)).stdout).toMatch(/^teardowns\/a\/index\.md:9:3/m);
  });

  test('as JSON: one array with the nine fields, and nothing else', async () => {
    const { stdout } = await seamline(['check', '--content', '.', '--format', 'json'], contentFolder(broken));
    const rows = JSON.parse(stdout) as readonly Record<string, unknown>[];
    expect(rows).toHaveLength(1);
    expect(Object.keys(rows[0] ?? {})).toEqual(['file', 'line', 'column', 'endLine', 'endColumn', 'severity', 'rule', 'message', 'source']);
    expect(rows[0]).toMatchObject({
      file: 'teardowns/a/index.md',
      line: 9,
      column: 3,
      endLine: 9,
      endColumn: 18,
      severity: 'error',
      rule: 'prose-unknown-name',
    });
  });

  test('as SARIF: every rule that it cites is described', async () => {
    const { stdout } = await seamline(['check', '--content', '.', '--format', 'sarif'], contentFolder(broken));
    const log = JSON.parse(stdout) as {
      readonly runs: readonly {
        readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string; readonly shortDescription?: unknown }[] } };
        readonly results: readonly { readonly ruleId: string }[];
      }[];
    };
    const described = log.runs[0]?.tool.driver.rules.filter((rule) => rule.shortDescription !== undefined).map((rule) => rule.id);
    for (const result of log.runs[0]?.results ?? []) expect(described).toContain(result.ruleId);
    expect(log.runs[0]?.results).toHaveLength(1);
  });

  test('progress shows on a terminal only', async () => {
    const content = contentFolder(broken);
    expect((await seamline(['check', '--content', content], temporaryFolder(), true)).stderr).toContain('\r');
    expect((await seamline(['check', '--content', content], temporaryFolder(), false)).stderr).toBe('');
  });
});

describe('new', () => {
  test('writes the template, which checks without an error, and never writes over anything', async () => {
    const cwd = temporaryFolder();
    mkdirSync(join(cwd, 'content'));
    expect(await seamline(['new', 'lm-q100'], cwd)).toMatchObject({ code: 0, stderr: '' });
    const path = join(cwd, 'content/teardowns/lm-q100/index.md');
    const text = readFileSync(path, 'utf8');
    expect(text).toContain('status: draft');
    expect(await seamline(['new', 'lm-q100'], cwd)).toMatchObject({ code: 1 });
    expect(readFileSync(path, 'utf8')).toBe(text);
  });

  test('with every blank filled as its example shows, the entry has no error', async () => {
    const cwd = temporaryFolder();
    await seamline(['new', 'lm-q100'], cwd);
    const path = join(cwd, 'content/teardowns/lm-q100/index.md');
    writeFileSync(path, readFileSync(path, 'utf8').replace(/[‹›]/g, ''));
    const { code, stdout } = await seamline(['check', '--format', 'json'], cwd);
    const rows = JSON.parse(stdout) as readonly { readonly severity: string; readonly message: string; readonly line: number }[];
    expect(rows.filter((row) => row.severity === 'error').map((row) => `${String(row.line)} ${row.message}`)).toEqual([]);
    expect(code).toBe(0);
  });
});

describe('schema and explain', () => {
  test('the schema is one JSON document that closes the format', async () => {
    const { code, stdout } = await seamline(['schema']);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ type: 'object', additionalProperties: false, required: ['title', 'device'] });
  });

  test.each(['internal-fault', 'prose-html-removed', 'yaml-syntax', 'capacitor-voltage-margin'])(
    'rule %s: title, why, what to do, source',
    async (id) => {
      const { code, stdout } = await seamline(['explain', id]);
      expect(code).toBe(0);
      expect(stdout).toMatch(new RegExp(`^${id} \\((?:error|warning|note)\\)\\n.+\\n\\n.+\\nWhat to do: .+\\nSource: .+\\n$`));
    },
  );

  test('formula: expression, symbols, source and the published examples', async () => {
    const { stdout } = await seamline(['explain', 'stored-energy']);
    expect(stdout).toMatch(/^stored-energy \(formula\)/);
    expect(stdout).toMatch(/Source: .+\nPublished examples that it reproduces:\n {2}/);
    expect(stdout).not.toContain('Worked apart');
  });

  test('formula with a figure that was worked apart: it is not called published, nor quoted', async () => {
    const { stdout } = await seamline(['explain', 'sum-of-powers']);
    expect(stdout).toMatch(/Other examples that it reproduces:\n {2}.+ → 97\.57 W \(Worked apart from this program with bc\)\n$/);
  });
});

test('a fault of the program itself is one line and ends with 1', async () => {
  const cwd = temporaryFolder();
  const { code, stderr } = await seamline(['check', '--content', contentFolder({})], join(cwd, 'gone\0'));
  expect(code).toBe(1);
  expect(stderr).toMatch(/^seamline failed: .+\n$/);
  expect(existsSync(join(cwd, 'gone'))).toBe(false);
});
