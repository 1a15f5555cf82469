import { existsSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { AstroIntegration } from 'astro';
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
          const file = openDataFile(prepared, request.url ?? '', server.config.base);
          if (file === null) {
            next();
            return;
          }
          response.setHeader('content-type', TYPES[extname(file)] ?? 'application/json');
          response.end(readFileSync(file));
        });
        server.watcher.add(manifest);
        server.watcher.on('change', tell);
        server.watcher.on('add', tell);
      },
    },
  };
}

const TYPES: Readonly<Record<string, string>> = { '.csv': 'text/csv; charset=utf-8', '.webp': 'image/webp', '.jpg': 'image/jpeg' };

/** The data file that an address asks for: a finished site holds these as files, while writing they lie in the prepared folder. */
function openDataFile(prepared: string, url: string, base: string): string | null {
  const path = new URL(url, 'http://site.invalid').pathname;
  const inside = path.startsWith(base) ? path.slice(base.length) : path.slice(1);
  if (inside.startsWith('photos/')) return readPhotoList(prepared).pictures.find(({ address }) => address === `/${inside}`)?.file ?? null;
  if (!/^(?:data\/[a-z.]+|teardowns\/[a-z0-9-]+\/(?:data\.json|parts\.csv)|(?:compare|planner)\/sheets\/[a-z0-9-]+\.json)$/.test(inside))
    return null;
  const file = openDataPath(prepared, inside);
  return existsSync(file) ? file : null;
}
