import { siteCorpus, type SiteCorpus } from '../../pages/site-corpus.ts';
import { readPreparedCorpus, stampOfPrepared } from '../../pipeline/prepared-corpus.ts';

let held: { readonly stamp: string; readonly corpus: SiteCorpus } | null = null;

/** While writing: all sheets side by side, laid out again whenever the prepared folder was written anew. */
export function preparedCorpus(): SiteCorpus {
  const folder = preparedFolder();
  const stamp = stampOfPrepared(folder);
  if (held?.stamp !== stamp) held = { stamp, corpus: siteCorpus(readPreparedCorpus(folder)) };
  return held.corpus;
}

/** The folder that the preparing step wrote, named by SEAMLINE_PREPARED. */
export function preparedFolder(): string {
  const folder = process.env['SEAMLINE_PREPARED'];
  if (folder === undefined)
    throw new Error('The environment variable SEAMLINE_PREPARED names no folder; the command "seamline dev" does this.');
  return folder;
}
