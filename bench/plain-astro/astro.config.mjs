import { defineConfig } from 'astro/config';

// A plain site as its own guide starts one: its loader, its default Markdown processor, no computation.
export default defineConfig({ devToolbar: { enabled: false } });
