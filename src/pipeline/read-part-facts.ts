import { join } from 'node:path';
import type { PartFacts } from '../corpus/part-facts/part-facts.ts';
import { standsThere, staysInside } from './inside-content.ts';
import { listFolder } from './list-folder.ts';
import type { YamlFault } from './open-yaml.ts';
import { partSheetInText, type NumberClaimed } from './part-sheet-in-text.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { readText } from './read-text.ts';

/** Reads the fact sheets `parts/<number>.yaml` of a content folder; a sheet with a fault in it still gives what could be read. */
export function readPartFacts(content: string): { readonly facts: readonly PartFacts[]; readonly findings: readonly FileFinding[] } {
  const folder = join(content, 'parts');
  const findings: FileFinding[] = [];
  if (!standsThere(folder) || !staysInside(folder, content, 'parts', findings)) return { facts: [], findings };
  const facts: PartFacts[] = [];
  const owners = new Map<string, string>();
  for (const { name } of listFolder(folder, 'parts', findings)) {
    if (name.startsWith('.')) continue;
    const file = `parts/${name}`;
    if (!/\.ya?ml$/i.test(name)) {
      findings.push({
        file,
        finding: pipelineFinding('stray-file', `${file} is no fact sheet; those are written in files like parts/VLR-81C.yaml`),
      });
      continue;
    }
    if (!staysInside(join(folder, name), content, file, findings)) continue;
    const sheet = readSheet(join(folder, name), file, owners, findings);
    if (sheet !== null) facts.push(sheet);
  }
  return { facts, findings };
}

function readSheet(path: string, file: string, owners: Map<string, string>, findings: FileFinding[]): PartFacts | null {
  const read = readText(path);
  if (!read.ok) {
    findings.push({ file, finding: read.finding });
    return null;
  }
  const { facts, claimed, faults } = partSheetInText(read.text, { file, hash: read.hash });
  for (const { message, line, column } of [...faults, ...claimedTwice(claimed, file, owners)])
    findings.push({ file, finding: pipelineFinding('part-sheet-invalid', message, { in: 'file', line, column }) });
  return facts;
}

/** Numbers that the fact sheet of another file is for; the others are this file's from now on. */
function claimedTwice(claimed: readonly NumberClaimed[], file: string, owners: Map<string, string>): readonly YamlFault[] {
  return claimed.flatMap(({ spelling, line, column }) => {
    const owner = owners.get(spelling);
    if (owner === undefined) owners.set(spelling, file);
    return owner === undefined || owner === file ? [] : [{ message: `${spelling} has the fact sheet ${owner} already`, line, column }];
  });
}
