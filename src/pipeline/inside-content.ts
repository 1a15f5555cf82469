import { lstatSync, realpathSync } from 'node:fs';
import { sep } from 'node:path';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { errorCode } from './read-text.ts';

/** Whether something of this name stands there, be it a symbolic link that leads nowhere. */
export function standsThere(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
}

/**
 * Follows symbolic links; one that leads out of the content folder, or nowhere, is reported.
 *
 * @param file names it in the finding: its path from the content folder
 */
export function staysInside(path: string, content: string, file: string, findings: FileFinding[]): boolean {
  try {
    const [real, root] = [realpathSync(path), realpathSync(content)];
    if (real === root || real.startsWith(root + sep)) return true;
    const message = `${file} is a symbolic link that leads out of the content folder`;
    findings.push({ file, finding: pipelineFinding('link-outside-content', message) });
  } catch (error) {
    const message = `${file} could not be read (${errorCode(error)}); a symbolic link that leads nowhere?`;
    findings.push({ file, finding: pipelineFinding('file-unreadable', message) });
  }
  return false;
}
