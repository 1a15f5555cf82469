import { join } from 'node:path';
import type { AstroIntegration } from 'astro';

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
        server.watcher.add(manifest);
        server.watcher.on('change', tell);
        server.watcher.on('add', tell);
      },
    },
  };
}
