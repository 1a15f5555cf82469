import type { APIRoute } from 'astro';
import { searchIndexOf } from '../../../data/across.ts';
import { readManifest } from '../../../data/prepared-folder.ts';

export function getStaticPaths(): { params: { name: string } }[] {
  return searchIndexOf(readManifest()).start.shards.map((name) => ({ params: { name } }));
}

/** Documents of all terms that begin alike. */
export const GET: APIRoute = ({ params }) => Response.json(searchIndexOf(readManifest()).shards.get(params['name'] ?? '') ?? {});
