/** What runs in a process or a thread of its own; `bin/join-program.mjs` names the same. */
type ProgramPart = 'prepare-process' | 'entry-worker' | 'log-worker' | 'built-site/sheet-page-worker';

/** File of a part: in this folder while the program runs from its sources, beside the main file where it was joined into a few. */
export function programPart(part: ProgramPart): URL {
  const fromSources = import.meta.url.endsWith('.ts');
  return new URL(fromSources ? `./${part}.ts` : `./${part.slice(part.lastIndexOf('/') + 1)}.mjs`, import.meta.url);
}
