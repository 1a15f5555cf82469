import type { APIRoute } from 'astro';
import { escapeText } from '../../figures/markup.ts';
import { corpusOf } from '../data/corpus-of-site.ts';
import { readManifest } from '../data/prepared-folder.ts';
import { href } from '../href.ts';

/** Former addresses that name a file, such as "2019/quadra.html": the file itself has to stand there, not a folder of that name. */
export function getStaticPaths(): { params: { former: string }; props: { slug: string; device: string } }[] {
  return corpusOf(readManifest())
    .formerAddresses.filter(({ path }) => path.endsWith('.html'))
    .map(({ path, slug, device }) => ({ params: { former: path.slice(0, -'.html'.length) }, props: { slug, device } }));
}

/** A page without style: it is gone before it is read, and its one link works in any browser. */
export const GET: APIRoute = ({ props }) => {
  const { site } = readManifest();
  const target = href(`/teardowns/${String(props['slug'])}/`);
  const canonical = site.address === null ? target : new URL(target, site.address).href;
  const device = escapeText(String(props['device']));
  return new Response(
    `<!doctype html>\n<html lang="${escapeText(site.language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">` +
      `<title>${device} has moved</title><meta name="robots" content="noindex"><link rel="canonical" href="${escapeText(canonical)}">` +
      `<meta http-equiv="refresh" content="0; url=${escapeText(target)}"></head>` +
      `<body><main><h1>This sheet has moved</h1><p>${device} is now at <a href="${escapeText(target)}">${escapeText(target)}</a>.</p></main></body></html>\n`,
    { headers: { 'content-type': 'text/html; charset=utf-8' } },
  );
};
