import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { SCHEME_SCRIPT } from '../render/scheme-script.ts';

/** The only script that stands in pages themselves, by its hash (Content Security Policy Level 3, section 2.3.1). */
const SCHEME_HASH = `'sha256-${createHash('sha256').update(SCHEME_SCRIPT).digest('base64')}'`;

/** What pages may load: nothing but the site's own files, and no script in the page but that of the scheme. */
export const CONTENT_POLICY = `default-src 'none'; script-src 'self' ${SCHEME_HASH}; style-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'`;

const HEADERS = '_headers';
const PLACE = '{content policy}';

/** Puts the policy in its place in the headers file of a finished site; one that the reviewer wrote without that place stays as it is. */
export function writePolicyHeader(folder: string): void {
  const path = join(folder, HEADERS);
  let headers: string;
  try {
    headers = readFileSync(path, 'utf8');
  } catch {
    return;
  }
  if (headers.includes(PLACE)) writeFileSync(path, headers.replaceAll(PLACE, CONTENT_POLICY));
}
