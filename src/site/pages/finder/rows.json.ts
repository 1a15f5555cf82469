import type { APIRoute } from 'astro';
import { packFinder } from '../../../corpus/pack-finder.ts';
import { finderOf } from '../../data/across.ts';
import { readManifest } from '../../data/prepared-folder.ts';

/** All devices, packed by column, for the finder and the comparison. */
export const GET: APIRoute = () => Response.json(packFinder(finderOf(readManifest())));
