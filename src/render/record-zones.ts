import type { Diagnostic } from '../diagnostics/finding.ts';
import { escapeText } from '../figures/markup.ts';
import type { Entry } from '../entry/entry.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { correctionList, findingList, findingsSentence } from './findings.ts';
import { workingView } from './working.ts';
import type { SheetZone } from './sheet-zone.ts';
import { sentence } from './words.ts';

/** Findings with their answers, gravest first. */
export function findingsZone(diagnostics: readonly Diagnostic[]): SheetZone {
  const sorted = gravestFirst(diagnostics);
  return {
    title: 'Findings',
    layout: 'full',
    side: escapeText(findingsSentence(sorted)),
    matter: sorted.length === 0 ? '' : findingList(sorted),
  };
}

/** What stands at the end of every sheet, after the findings: corrections, how values were computed, sources. */
export function recordZones({ entry, derived }: PreparedSheet): readonly (SheetZone | null)[] {
  const named = Object.keys(derived.named).length;
  return [
    {
      title: 'Corrections',
      layout: 'side',
      side: `<p>Changes to a published number are listed for good.</p>`,
      matter: correctionList(entry.corrections, entry.published),
    },
    named === 0
      ? null
      : {
          title: 'How it was computed',
          layout: 'full',
          side: `Each computed value with its formula, what went in and how that is known. Formulas have their own pages under <a href="/methods/">Methods</a>.`,
          matter: workingView(entry, derived),
        },
    entry.sources.length === 0
      ? null
      : { title: 'Sources', layout: 'side', side: '<p>What the author read for this sheet.</p>', matter: sourceList(entry) },
  ];
}

const GRAVITY: Readonly<Record<Diagnostic['severity'], number>> = { error: 0, warning: 1, note: 2 };

/** Errors, warnings, notes; within each as they stand in the entry. */
function gravestFirst(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return [...diagnostics].sort((one, other) => GRAVITY[one.severity] - GRAVITY[other.severity]);
}

function sourceList(entry: Entry): string {
  const items = entry.sources.map(({ title, url, note }) => {
    const words =
      url !== null && /^https?:\/\//.test(url) ? `<a href="${escapeText(url)}" rel="noopener">${escapeText(title)}</a>` : escapeText(title);
    return `<li>${words}${note === null ? '' : ` <span class="soft">${sentence(note)}</span>`}</li>`;
  });
  return `<ul class="lines">${items.join('')}</ul>`;
}
