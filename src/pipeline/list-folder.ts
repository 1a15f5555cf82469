import { readdirSync, type Dirent } from 'node:fs';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { errorCode } from './read-text.ts';
import { byText } from './text-order.ts';

/** What is in a folder, by name; empty and reported where it cannot be listed, as where a file stands in its place. `file` names it in the finding. */
export function listFolder(path: string, file: string, findings: FileFinding[]): readonly Dirent[] {
  try {
    return readdirSync(path, { withFileTypes: true }).sort((one, other) => byText(one.name, other.name));
  } catch (error) {
    findings.push({ file, finding: pipelineFinding('file-unreadable', `The folder could not be read (${errorCode(error)})`) });
    return [];
  }
}
