import type { APIRoute } from 'astro';
import { readAcross } from '../../../data/across.ts';
import { readManifest } from '../../../data/prepared-folder.ts';
import { comparedSheet } from '../../../../render/compared-sheet.ts';

export function getStaticPaths(): { params: { slug: string }; cacheKey: string }[] {
  const across = readAcross();
  return readManifest()
    .sheets.filter(({ slug }) => across[slug] !== undefined)
    .map(({ slug, digest }) => ({ params: { slug }, cacheKey: digest }));
}

/** One device for the comparison. */
export const GET: APIRoute = ({ params }) => {
  const sheet = readManifest().sheets.find(({ slug }) => slug === params['slug']);
  const facts = readAcross()[params['slug'] ?? '']?.facts;
  return Response.json(sheet === undefined || facts === undefined ? null : comparedSheet(sheet, facts));
};
