import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { hasErrors } from '../../src/diagnostics/has-errors.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { readSheetFile } from '../../src/pipeline/sheet-file.ts';
import { contentFolder, entryText, temporaryFolder, writeFiles } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

const ENTRY = entryText(
  'LM Q30',
  'Some words.\n',
  `nameplate: { input: "100-240 V~ 50/60 Hz 0.8 A", output: [20 V 1.5 A], total: 30 W }
ports: { C1: { connector: USB-C, offers: [5 V 3 A, 20 V 1.5 A] } }
stages: { main: { is: flyback } }
parts:
  main:
    C5: { role: output capacitor, rating: "220 µF 25 V electrolytic" }
`,
);

const POLICY = `title: Lines of this bench
meaning: For chargers that stay plugged in.
builds on: consumer-practice
lines:
  - { part class: aluminium electrolytic, quantity: voltage, limit: 70 %, caution: 0.85, source: Ten years of opened chargers }
`;

async function stressOf(files: Readonly<Record<string, string>>): Promise<string> {
  const work = temporaryFolder();
  const content = contentFolder({ 'teardowns/lm-q30/index.md': ENTRY, ...files });
  const { diagnostics } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return readSheetFile(join(work, 'p'), 'lm-q30').zones.find(({ title }) => title === 'Stress against rating')?.matter ?? '';
}

describe('derating of a site', () => {
  test('a site that says nothing is judged by consumer practice', async () => {
    const matter = await stressOf({});
    expect(matter).toContain('Limit ticks: Consumer practice.');
    expect(matter).toContain('within <span class="mono">0.80</span>');
  });

  test('site.yaml chooses a policy for every entry that names none', async () => {
    const matter = await stressOf({ 'site.yaml': 'name: Bench\nderating: rac-guideline\n' });
    expect(matter).not.toContain('Consumer practice');
    expect(matter).toContain('Limit ticks: ');
  });

  test('a policy that the site wrote is used under its own name, with the lines of the one that it builds on', async () => {
    const matter = await stressOf({ 'site.yaml': 'name: Bench\nderating: bench-lines\n', 'policies/bench-lines.yaml': POLICY });
    expect(matter).toContain('Limit ticks: Lines of this bench, a policy of this site’s own. For chargers that stay plugged in.');
    expect(matter).toContain('over <span class="mono">0.70</span>');
  });

  test('an entry may name the policy that the site wrote', async () => {
    const entry = ENTRY.replace('stages:', 'derating: bench-lines\nstages:');
    const matter = await stressOf({ 'teardowns/lm-q30/index.md': entry, 'policies/bench-lines.yaml': POLICY });
    expect(matter).toContain('Lines of this bench');
  });

  test('a changed policy is used at once, whatever was kept of the last run', async () => {
    const work = temporaryFolder();
    const content = contentFolder({
      ...{ 'teardowns/lm-q30/index.md': ENTRY, 'site.yaml': 'name: Bench\nderating: bench-lines\n' },
      'policies/bench-lines.yaml': POLICY,
    });
    const run = () => prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
    const matter = () => readSheetFile(join(work, 'p'), 'lm-q30').zones.find(({ title }) => title === 'Stress against rating')?.matter;
    await run();
    expect((await run()).counts.parsed).toBe(0);
    writeFiles(content, { 'policies/bench-lines.yaml': POLICY.replace('70 %', '0.84') });
    expect((await run()).counts.parsed).toBe(1);
    expect(matter()).toContain('within <span class="mono">0.84</span>');
  });

  test.each([
    ['bench-lines', 'lines: []', '1:8 "lines" must be a list of lines'],
    [
      'bench-lines',
      POLICY.replace('aluminium electrolytic', 'aluminum electrolytic'),
      '5:19 There is no part class "aluminum electrolytic"',
    ],
    ['bench-lines', POLICY.replace('limit: 70 %', 'limit: 70'), '5:69 "limit" must be the share of the rating'],
    ['bench-lines', POLICY.replace('caution: 0.85', 'caution: 0.6'), '"caution" is the second line and must be above the limit 0.7'],
    ['bench-lines', POLICY.replace('source:', 'sauce:'), '5:90 "sauce" is not a field of a line'],
    ['bench-lines', POLICY.replace('consumer-practice', 'consumers'), '3:12 There is no derating policy "consumers"'],
    [
      'bench-lines',
      'title: [',
      '1:9 policies/bench-lines.yaml is not valid YAML: Flow sequence in block collection must be sufficiently indented and end with a ]',
    ],
    ['mil-std-975m', POLICY, '1:1 The program has a policy mil-std-975m already'],
    ['Bench Lines', POLICY, 'is no derating policy'],
  ])('policies/%s.yaml with a fault: %#', async (name, text, message) => {
    const { diagnostics } = await prepareIn(contentFolder({ [`policies/${name}.yaml`]: text }));
    const said = diagnostics.map(({ line, column, message: words }) => `${String(line)}:${String(column)} ${words}`);
    expect(said).toContainEqual(expect.stringContaining(message));
    expect(hasErrors(diagnostics) || name === 'Bench Lines').toBe(true);
  });
});
