import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SiteSettings } from '../../corpus/prepared.ts';
import { SITE_SETTINGS_FILE } from '../../pipeline/site-settings-file.ts';

/** The settings of the site, which the command writes into the folder that SEAMLINE_PREPARED names. Throws where there are none. */
export function siteSettings(): SiteSettings {
  const file = join(process.env['SEAMLINE_PREPARED'] ?? '', SITE_SETTINGS_FILE);
  if (!existsSync(file))
    throw new Error(
      `No ${SITE_SETTINGS_FILE}: the environment variable SEAMLINE_PREPARED has to name the folder of prepared content. The command "seamline build" does this.`,
    );
  // Written by our own command a moment ago; its shape is that command's contract.
  return JSON.parse(readFileSync(file, 'utf8')) as SiteSettings;
}
