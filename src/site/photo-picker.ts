import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** While writing, and only then: every page gets the picker of places in photos. */
export function photoPicker(): AstroIntegration {
  return {
    name: 'photo-picker',
    hooks: {
      'astro:config:setup': ({ command, injectScript }) => {
        if (command !== 'dev') return;
        const script = fileURLToPath(new URL('./scripts/photo-picker.ts', import.meta.url));
        injectScript('page', `import { startPhotoPicker } from ${JSON.stringify(script)}; startPhotoPicker(document);`);
      },
    },
  };
}
