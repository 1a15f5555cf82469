import type { APIRoute } from 'astro';
import { searchIndexOf } from '../../data/across.ts';
import { readManifest } from '../../data/prepared-folder.ts';

/** What the search reads first. */
export const GET: APIRoute = () => Response.json(searchIndexOf(readManifest()).start);
