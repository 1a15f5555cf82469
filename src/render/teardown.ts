import type { DrawnSheet } from '../corpus/drawn-sheet.ts';
import type { SizedDevice } from '../corpus/size-field.ts';
import type { SheetBeside } from '../corpus/sheet-beside.ts';
import type { SheetRank } from '../corpus/sheet-ranks.ts';
import type { SiteSettings } from '../corpus/prepared.ts';
import { besideZone } from './beside-zone.ts';
import { findingsZone } from './record-zones.ts';
import { sheetScatter } from './sheet-scatter.ts';
import type { SheetZone } from './sheet-zone.ts';
import { completedTitle } from './title-block.ts';
import { ZONE_END, zoneLetter, zoneList, zoneStart, zoneTitle, type ZoneFrame } from './zone.ts';

/** Everything that a teardown page shows beside its own sheet. */
export interface TeardownSurroundings {
  readonly site: SiteSettings;
  readonly beside: SheetBeside;
  /** All devices of a known size, for the scatter. */
  readonly devices: readonly SizedDevice[];
}

/** All zones of a teardown in order; a zone without data is left out and the letters close up. */
export function teardownZones(slug: string, sheet: DrawnSheet, { site, beside, devices }: TeardownSurroundings): string {
  const parts = [
    ...sheet.zones,
    besideZone(beside, { slug, topology: sheet.topology }, sheetScatter(slug, devices)),
    findingsZone([...sheet.diagnostics, ...beside.findings]),
    ...sheet.record,
  ].filter((part) => part !== null);
  const first: ZoneFrame = { letter: 'A', title: null, label: 'Title block and outline', className: 'za' };
  const framed = parts.map((part, index) => ({ part, frame: { letter: zoneLetter(index + 1), title: part.title, label: part.title } }));
  const title = completedTitle(sheet.title, { rank: densityRank(beside), author: sheet.author ?? site.author });
  return (
    sheet.recall +
    `${zoneStart(first)}${title}${ZONE_END}` +
    zoneList(framed.map(({ frame }) => frame)) +
    framed.map(({ frame, part }) => zoneHtml(frame, part)).join('')
  );
}

/** The rank that the title block has room for. */
function densityRank({ ranks }: SheetBeside): SheetRank | null {
  return ranks.find(({ measure }) => measure === 'density') ?? null;
}

function zoneHtml(frame: ZoneFrame, part: SheetZone): string {
  const side =
    part.layout === 'side'
      ? `<div class="side">${part.side}</div></div><div class="c38">${part.matter}</div>`
      : `</div><div class="c37">${part.side === '' ? '' : `<p class="lead">${part.side}</p>`}</div><div class="c18">${part.matter}</div>`;
  return `${zoneStart(frame)}<div class="zg"><div class="c12">${zoneTitle(frame)}${side}</div>${ZONE_END}`;
}
