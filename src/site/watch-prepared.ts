import { existsSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { siteFiles } from '../pages/site-files.ts';
import { siteAddresses } from '../pipeline/site-addresses.ts';
import { preparedCorpus } from './data/prepared-corpus.ts';
import { readPhotoList } from '../pipeline/photos/photo-list.ts';
import { openDataPath } from '../pipeline/open-data-path.ts';

/**
 * While writing: when the prepared folder is written anew, the list of pages is made again (an entry may be new, mended or
 * broken since) and open pages are loaded again. Without this the generator keeps the list with which it started.
 */
export function watchPrepared(prepared: string | undefined): AstroIntegration {
  return {
    name: 'watch-prepared',
    hooks: {
      'astro:server:setup': ({ server }) => {
        if (prepared === undefined) return;
        const manifest = join(prepared, 'manifest.json');
        const tell = (path: string): void => {
          if (path !== manifest) return;
          // The event by which the generator's own content makes it forget its list of pages.
          for (const environment of Object.values(server.environments)) environment.hot.send('astro:content-changed', {});
          server.ws.send({ type: 'full-reload' });
        };
        server.middlewares.use((request, response, next) => {
          const path = pathInSite(request.url ?? '', server.config.base);
          const file = openDataFile(prepared, path);
          const content = file === null ? textOverAll(path, server.config.base) : readFileSync(file);
          if (content === null) {
            next();
            return;
          }
          response.setHeader('content-type', TYPES[extname(file ?? path)] ?? 'application/json');
          response.end(content);
        });
        server.watcher.add(manifest);
        server.watcher.on('change', tell);
        server.watcher.on('add', tell);
      },
    },
  };
}

const TYPES: Readonly<Record<string, string>> = {
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.webp': 'image/webp',
  '.jpg': 'image/jpeg',
  '.xml': 'application/atom+xml; charset=utf-8',
};

/** Path from the root of the site, without a slash before it. */
function pathInSite(url: string, base: string): string {
  const path = new URL(url, 'http://site.invalid').pathname;
  return path.startsWith(base) ? path.slice(base.length).replace(/^\//, '') : path.slice(1);
}

/** The data file that an address asks for: a finished site holds these as files, while writing they lie in the prepared folder. */
function openDataFile(prepared: string, path: string): string | null {
  if (path.startsWith('photos/')) return readPhotoList(prepared).pictures.find(({ address }) => address === `/${path}`)?.file ?? null;
  if (!/^(?:data\/[a-z.]+|teardowns\/[a-z0-9-]+\/(?:data\.json|parts\.csv)|(?:compare|planner)\/sheets\/[a-z0-9-]+\.json)$/.test(path))
    return null;
  const file = openDataPath(prepared, path);
  return existsSync(file) ? file : null;
}

/** What a finished site holds as a file over all sheets: the finder's rows, the search index, the feed, a former address with a file's name. */
function textOverAll(path: string, base: string): string | null {
  if (!/^(?:finder\/rows\.json|search\/.+\.json|feed\.xml|.+\.html)$/.test(path)) return null;
  const corpus = preparedCorpus();
  const addresses = siteAddresses(base.endsWith('/') ? base : `${base}/`, corpus.manifest.site.address);
  return siteFiles(corpus, addresses).find((file) => file.path === path)?.text ?? null;
}
