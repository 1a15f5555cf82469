import type { APIRoute } from 'astro';
import { searchIndexOf } from '../../../data/across.ts';
import { readManifest } from '../../../data/prepared-folder.ts';

export function getStaticPaths(): { params: { chunk: string } }[] {
  return searchIndexOf(readManifest()).chunks.map((_, index) => ({ params: { chunk: String(index) } }));
}

/** Address, title and line of a few documents. */
export const GET: APIRoute = ({ params }) => Response.json(searchIndexOf(readManifest()).chunks[Number(params['chunk'])] ?? []);
