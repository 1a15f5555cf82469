import { describe, expect, test } from 'vitest';
import { contentFolder, entryText } from './content-folder.ts';
import { placesOf, prepareIn } from './run-in.ts';

describe('a parts file', () => {
  const withParts = async (csv: string | Uint8Array): Promise<string[]> => {
    const stages = 'stages: { input: input filter }\nparts: parts.csv\n';
    const prepared = await prepareIn(
      contentFolder({ 'teardowns/a/index.md': entryText('A', 'x\n', stages), 'teardowns/a/parts.csv': csv }),
    );
    return prepared.diagnostics.map(
      ({ file, line, column, rule, message }) =>
        `${file.replace('teardowns/a/', '')}:${String(line)}:${String(column)} ${rule}: ${message}`,
    );
  };

  test.each([
    'stage,reference,role,rating\ninput,F1,fuse,T3.15 A 250 VAC\n',
    'Stage;Reference;Role;Rating\r\ninput;F1;fuse;T3.15 A 250 VAC\r\n',
    '\uFEFFstage\treference\trole\trating\ninput\tF1\tfuse\tT3.15 A 250 VAC\n',
  ])('is read with commas, semicolons or tabs', async (csv) => {
    expect((await withParts(csv)).filter((finding) => !finding.startsWith('index.md'))).toEqual([]);
  });

  test('a ragged row is reported with its line, and all others are read', async () => {
    const findings = await withParts('stage,reference,role\ninput,F1\ninput,F2,fuse\ninput,F3,fuse,x\n');
    expect(findings.filter((finding) => finding.includes('parts-file-row'))).toEqual([
      'parts.csv:2:1 parts-file-row: This row has another number of cells than the heading',
      'parts.csv:4:1 parts-file-row: This row has another number of cells than the heading',
    ]);
  });

  test('a wrong column, a repeated reference, an empty cell and a column that stands twice have their places', async () => {
    expect(await withParts('stage,reference,roel\ninput,F1,fuse\n')).toContainEqual(
      expect.stringMatching(/^parts\.csv:1:1 unknown-key: "roel" is no column/),
    );
    expect(await withParts('stage,reference,role\ninput,F1,fuse\ninput,F1,fuse\n')).toContainEqual(
      expect.stringMatching(/^parts\.csv:3:1 duplicate-reference: F1 stands twice/),
    );
    expect(await withParts('stage,reference,role\n,F1,fuse\n')).toContainEqual(
      expect.stringMatching(/^parts\.csv:2:1 missing-field: This row has no stage/),
    );
    expect(await withParts('stage,reference,role,Role\ninput,F1,fuse,fuse\n')).toContainEqual(
      'parts.csv:1:22 parts-file-row: The column "Role" stands twice',
    );
    expect(await withParts('stage,reference,role\n__proto__,__proto__,fuse\n')).not.toContainEqual(
      expect.stringContaining('internal-fault'),
    );
  });

  test('a rating that cannot be read is reported in its cell', async () => {
    const findings = await withParts('stage,reference,role,rating\ninput,"F1, F2",fuse,T3.15 A 250 VAC\ninput,F3,fuse,3 zorks\n');
    expect(findings.some((finding) => /^parts\.csv:3:1[5-9] /.test(finding))).toBe(true);
  });

  test('an open quote, and a file that is not there, are said', async () => {
    expect(
      (await withParts('stage,reference,role\ninput,"F1,fuse\n')).some(
        (finding) => finding.startsWith('parts.csv:') && finding.includes('parts-file-row'),
      ),
    ).toBe(true);
    const prepared = await prepareIn(contentFolder({ 'teardowns/a/index.md': entryText('A', 'x\n', 'parts: ../../site.yaml\n') }));
    expect(placesOf(prepared)).toContain('teardowns/a/index.md:7:8 parts-file-missing');
  });
});
