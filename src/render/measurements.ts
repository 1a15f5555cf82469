import { escapeText } from '../figures/markup.ts';
import { scrollRegion } from './scroll-region.ts';
import { factValue } from '../derived/fact-value.ts';
import { isMissing } from '../values/value.ts';
import { instrumentWords, methodWords } from './made-by.ts';
import { quantityWords } from './quantity.ts';
import type { Claim, Entry, MeasuredPoint } from '../entry/entry.ts';
import { methodClass } from '../entry/method-class.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { sentence } from './words.ts';

/** Measured figures with their conditions, then what the maker or a document states; empty where there is neither. */
export function measurementsView(entry: Entry): string {
  const measured = entry.measurements.length === 0 ? '' : measuredTable(entry.measurements);
  const claimed = entry.claims.length === 0 ? '' : claimsTable(entry.claims);
  return `${measured}${claimed}`;
}

function measuredTable(points: readonly MeasuredPoint[]): string {
  const withHow = points.some((point) => methodOf(point) !== '');
  const rows = points.map(
    (point) =>
      `<tr><th scope="row">${escapeText(sentenceCase(point.subject))}${point.place === null ? '' : `<span class="kind">${escapeText(point.place)}</span>`}</th>` +
      `<td class="n">${readingCell(point)}${reportedWord(point)}</td><td>${sentence(conditions(point))}</td>${withHow ? `<td class="soft">${methodOf(point)}</td>` : ''}</tr>`,
  );
  return scrollRegion(
    'Measurements',
    `<table><caption class="vh">Measurements with their conditions.</caption><thead><tr><th scope="col">Measured</th><th scope="col" class="n">Value</th><th scope="col">Conditions</th>${withHow ? '<th scope="col">How</th>' : ''}</tr></thead><tbody>${rows.join('')}</tbody></table>`,
  );
}

/** As written, linked to the instrument of the bench that it was read on or the method, with what the instrument leaves open. */
function readingCell({ value }: MeasuredPoint): string {
  const written = escapeText(value.quantity.written);
  const anchor = value.readOn?.instrument ?? value.method;
  if (anchor === undefined) return written;
  const known = factValue(value);
  const interval = isMissing(known) ? '' : quantityWords(known, { interval: true });
  const spread = !interval.includes(' to ') ? '' : `<span class="kind">${escapeText(interval)}</span>`;
  return `<a class="q" href="/bench/#${escapeText(anchor)}">${written}</a>${spread}`;
}

/** A figure that a system gives of itself is of a lower class, and says so where it stands. */
function reportedWord({ method, instrument }: MeasuredPoint): string {
  return methodClass(method, instrument) === 'reported' ? '<span class="kind">reported, not measured</span>' : '';
}

/** "line 230 V, load 100 %". */
function conditions(point: MeasuredPoint): string {
  return Object.entries(point.conditions)
    .map(([key, value]) => `${key} ${value}`)
    .join(', ');
}

/** Evidence, instruments, method and note; what stands on the bench page is a link. */
function methodOf({ value, instrument, byInstrument, method, byMethod, note }: MeasuredPoint): string {
  return [
    value.evidence === 'measured' ? '' : escapeText(value.evidence),
    instrument === null ? '' : instrumentWords(instrument, byInstrument),
    methodWords(method, byMethod),
    note === null ? '' : sentence(note),
  ]
    .filter((piece) => piece !== '')
    .join('; ');
}

function claimsTable(claims: readonly Claim[]): string {
  const rows = claims.map((claim) => {
    const where = [claim.line, claim.output, claim.load, claim.port, claim.basis, claim.where, claim.note]
      .filter((piece) => piece !== null)
      .join(', ');
    return `<tr><th scope="row">${escapeText(sentenceCase(claim.of))}</th><td class="n wrap">${escapeText(claim.written)}</td><td class="soft">${escapeText(where)}</td></tr>`;
  });
  return `<table class="claims"><caption><b>Stated by the maker.</b> Taken down, not measured here.</caption><thead><tr><th scope="col">Stated</th><th scope="col" class="n">Value</th><th scope="col">Where and when</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}
