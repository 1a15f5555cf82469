import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { SiteSettings } from '../corpus/prepared.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** Where the frames read the settings of the site, in the prepared folder: they are made while the entries are still being read. */
export const SITE_SETTINGS_FILE = 'site.json';

/** Writes the settings for the site generator. */
export function writeSiteSettings(prepared: string, site: SiteSettings): void {
  mkdirSync(prepared, { recursive: true });
  writeIfChanged(join(prepared, SITE_SETTINGS_FILE), JSON.stringify(site));
}
