import { writeFileSync } from 'node:fs';
import { framedPage } from '../../pages/framed-page.ts';
import { teardownPage } from '../../pages/teardown-page.ts';
import { readSheetFile } from '../sheet-file.ts';
import { siteAddresses } from '../site-addresses.ts';
import { pageFacts, type PageFacts } from './page-facts.ts';
import type { SheetJob, SheetWriting } from './sheet-pages.ts';

/** Writes the page of a sheet: its drawing, what stands beside it, the frame. A sheet is read when its page is made, and then forgotten. */
export function sheetPageWriter({ prepared, site, base, frames, devices }: SheetWriting): (job: SheetJob) => PageFacts {
  const framing = { frames, site, base, addresses: siteAddresses(base, site.address) };
  return ({ summary, beside, to }) => {
    const page = teardownPage(readSheetFile(prepared, summary.slug), { summary, beside, site, devices });
    const html = framedPage(page, framing);
    writeFileSync(to, html);
    return pageFacts(html);
  };
}
