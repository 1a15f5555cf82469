import { statSync, type Dirent } from 'node:fs';
import { join } from 'node:path';
import { addressOf, isAddress } from './address.ts';
import { standsThere, staysInside } from './inside-content.ts';
import { listFolder } from './list-folder.ts';
import { pipelineFinding, type FileFinding, type PipelineRuleId } from './pipeline-rule.ts';

/** A teardown's file that is there to be read. */
export interface EntryFile {
  readonly slug: string;
  /** Path from the content folder, forward slashes. */
  readonly file: string;
  readonly path: string;
}

/** The folders of a content folder, in the order of their names. */
export interface ContentListing {
  readonly entries: readonly EntryFile[];
  readonly findings: readonly FileFinding[];
}

/** Lists the teardowns of a content folder and says what is wrong with the folders, before any file is read. */
export function scanContent(content: string): ContentListing {
  const folder = join(content, 'teardowns');
  const findings: FileFinding[] = [];
  if (!standsThere(folder) || !staysInside(folder, content, 'teardowns', findings)) return { entries: [], findings };
  const entries: EntryFile[] = [];
  const listed = listFolder(folder, 'teardowns', findings).filter((each) => !each.name.startsWith('.'));
  for (const item of listed) {
    if (!staysInside(join(folder, item.name), content, `teardowns/${item.name}`, findings)) continue;
    const entry = isFolder(join(folder, item.name))
      ? entryIn(folder, item.name, content, findings)
      : strayFile(item.name, listed, findings);
    if (entry !== null) entries.push(entry);
  }
  reportCollisions(entries, findings);
  return { entries, findings };
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function entryIn(folder: string, name: string, content: string, findings: FileFinding[]): EntryFile | null {
  const file = `teardowns/${name}/index.md`;
  const path = join(folder, name, 'index.md');
  const names = listFolder(join(folder, name), `teardowns/${name}`, findings).map((each) => each.name);
  if (!names.includes('index.md')) {
    const alike = names.find((each) => each.toLowerCase() === 'index.md') ?? names.find((each) => /\.(?:md|markdown)$/i.test(each));
    report(
      findings,
      file,
      'folder-without-index',
      `The folder teardowns/${name} has no index.md${alike === undefined ? '' : `; it has ${alike}: rename it to index.md`}`,
    );
    return null;
  }
  if (!staysInside(path, content, file, findings)) return null;
  if (!isAddress(name)) {
    const suggested = addressOf(name);
    const hint = suggested === '' ? 'use letters a to z, digits and hyphens' : `rename the folder to ${suggested}`;
    report(findings, file, 'address-characters', `The folder name "${name}" does not make an address: ${hint}`);
  }
  return { slug: name, file, path };
}

function strayFile(name: string, listed: readonly Dirent[], findings: FileFinding[]): null {
  const stem = name.replace(/\.(?:md|markdown)$/i, '');
  const folder = listed.find((each) => each.name !== name && addressOf(each.name) === addressOf(stem));
  if (stem !== name && folder !== undefined) {
    report(
      findings,
      `teardowns/${name}`,
      'address-collision',
      `teardowns/${name} and teardowns/${folder.name}/index.md both have the address /teardowns/${addressOf(stem)}/`,
    );
  } else {
    const hint = stem === name ? '' : `; an entry is written in teardowns/${addressOf(stem)}/index.md`;
    report(findings, `teardowns/${name}`, 'stray-file', `teardowns/${name} is a file among the folders of teardowns${hint}`);
  }
  return null;
}

/** Reports every folder whose address another one has; all of them are read none the less, for their own findings. */
function reportCollisions(entries: readonly EntryFile[], findings: FileFinding[]): void {
  const byAddress = Map.groupBy(entries, (entry) => addressOf(entry.slug));
  for (const [address, group] of byAddress) {
    if (group.length < 2) continue;
    for (const entry of group) {
      const others = group.filter((other) => other !== entry).map((other) => other.file);
      report(
        findings,
        entry.file,
        'address-collision',
        `${entry.file} and ${others.join(' and ')} both have the address /teardowns/${address}/`,
      );
    }
  }
}

function report(findings: FileFinding[], file: string, rule: PipelineRuleId, message: string): void {
  findings.push({ file, finding: pipelineFinding(rule, message) });
}
