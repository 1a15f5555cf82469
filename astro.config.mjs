import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'astro/config';
import { sheetFonts } from './src/site/fonts/sheet-fonts.ts';
import { photoPicker } from './src/site/photo-picker.ts';
import { watchPrepared } from './src/site/watch-prepared.ts';

const root = fileURLToPath(new URL('.', import.meta.url));
// A cache inside node_modules is lost at every clean install; the command names one beside the content.
const cache = resolve(process.env.SEAMLINE_CACHE ?? join(root, '.cache'), 'site');

// The faces are the same for every site: they are cut once for an installation, not once for a site.
const fonts = join(root, 'node_modules/.cache/seamline-fonts');

// The site asks nobody anything, so neither does its generator.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

/** Tells the layout whether pages are built or served by `dev`, whose own scripts and styles a strict policy would refuse. */
function contentPolicy() {
  return {
    name: 'content-policy',
    hooks: {
      'astro:config:setup': ({ command, updateConfig }) => {
        updateConfig({ vite: { define: { __STRICT_POLICY__: JSON.stringify(command === 'build') } } });
      },
    },
  };
}

export default defineConfig({
  root,
  srcDir: './src/site',
  outDir: resolve(process.env.SEAMLINE_OUT ?? join(root, 'dist')),
  cacheDir: cache,
  base: process.env.SEAMLINE_BASE ?? '/',
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never', assets: '_sheet' },
  compressHTML: true,
  devToolbar: { enabled: false },
  integrations: [sheetFonts({ folder: fonts }), contentPolicy(), photoPicker(), watchPrepared(process.env.SEAMLINE_PREPARED)],
  vite: {
    cacheDir: join(cache, 'vite'),
    // A strict policy allows no data addresses: small fonts stay files.
    build: { assetsInlineLimit: 0 },
    server: { fs: { allow: [root, cache, tmpdir()] } },
  },
});
