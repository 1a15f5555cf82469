import { join } from 'node:path';
import type { DeratingPolicy } from '../standards/derating/policy.ts';
import { DERATING_POLICIES } from '../standards/derating/index.ts';
import { standsThere, staysInside } from './inside-content.ts';
import { listFolder } from './list-folder.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { policyInText } from './policy-in-text.ts';
import { readText } from './read-text.ts';

/** Name of the folder beside site.yaml. */
const FOLDER = 'policies';

/** Reads the derating policies `policies/<id>.yaml` that a site wrote itself; a faulty line is reported and left out. */
export function readPolicies(content: string): {
  readonly policies: readonly DeratingPolicy[];
  readonly findings: readonly FileFinding[];
} {
  const folder = join(content, FOLDER);
  const findings: FileFinding[] = [];
  if (!standsThere(folder) || !staysInside(folder, content, FOLDER, findings)) return { policies: [], findings };
  const policies = listFolder(folder, FOLDER, findings).flatMap(({ name }) => {
    if (name.startsWith('.')) return [];
    const file = `${FOLDER}/${name}`;
    const fault = nameFault(name, file);
    if (fault !== null) {
      findings.push({ file, finding: fault });
      return [];
    }
    if (!staysInside(join(folder, name), content, file, findings)) return [];
    const read = readText(join(folder, name));
    if (!read.ok) {
      findings.push({ file, finding: read.finding });
      return [];
    }
    const { policy, faults } = policyInText(read.text, name.slice(0, -'.yaml'.length), file);
    findings.push(
      ...faults.map(({ message, line, column }) => ({
        file,
        finding: pipelineFinding('derating-policy-invalid', message, { in: 'file', line, column }),
      })),
    );
    return policy === null ? [] : [policy];
  });
  return { policies, findings };
}

function nameFault(name: string, file: string): ReturnType<typeof pipelineFinding> | null {
  const id = /^([a-z0-9]+(?:-[a-z0-9]+)*)\.yaml$/.exec(name)?.[1];
  if (id === undefined) {
    return pipelineFinding('stray-file', `${file} is no derating policy; those are written in files like ${FOLDER}/bench-lines.yaml`);
  }
  if (!DERATING_POLICIES.some((policy) => policy.id === id)) return null;
  return pipelineFinding('derating-policy-invalid', `The program has a policy ${id} already; give the file another name`);
}
