import { escapeText } from '../figures/markup.ts';
import type { Manifest } from '../corpus/prepared.ts';
import { findingList } from './findings.ts';
import { ZONE_END, zoneStart } from './zone.ts';
import { counted } from '../units/counted.ts';

/** Page of an entry that cannot be shown yet: what is wrong, where, and what to do. Only made in `dev`. */
export function brokenEntryZones({ slug, file, diagnostics }: Manifest['broken'][number]): string {
  const errors = diagnostics.filter((diagnostic) => diagnostic.severity === 'error').length;
  const sorted = [...diagnostics].sort((one, other) => one.line - other.line || one.column - other.column);
  return (
    `${zoneStart({ letter: 'A', title: null, label: 'Findings' })}<h1 id="zones">${escapeText(slug)} cannot be shown yet</h1>` +
    `<p class="lead">${counted(errors, 'error')} in <span class="q wrap">${escapeText(file)}</span>. The page appears when they are mended; all other sheets are served.</p>${findingList(sorted, { answers: false })}${ZONE_END}`
  );
}
