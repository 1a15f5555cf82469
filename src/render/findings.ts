import { escapeText } from '../figures/markup.ts';
import { scrollRegion } from './scroll-region.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { Correction } from '../entry/entry.ts';
import { fold } from './fold.ts';
import { markWith } from './mark.ts';
import { sentence } from './words.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** What the checks say, in three columns: severity, subject and place; what and why; the author's answer. */
export function findingList(diagnostics: readonly Diagnostic[], options: { readonly answers: boolean } = { answers: true }): string {
  return `<ol class="findings">${diagnostics.map((diagnostic) => findingItem(diagnostic, options.answers)).join('')}</ol>`;
}

function findingItem(diagnostic: Diagnostic, answers: boolean): string {
  const { severity, rule, subject, message, why, advice, source, answer } = diagnostic;
  const file = diagnostic.file.split('/').pop() ?? diagnostic.file;
  const place = `<span class="mono">${escapeText(file)} ${diagnostic.line}:${diagnostic.column}</span>`;
  const head = `<p><b>${markWith(severity, sentenceCase(severity))}</b></p><p>${subject === null ? '' : `<b class="mono">${escapeText(subject)}</b> `}<a href="/rules/${rule}/">${escapeText(rule.replaceAll('-', ' '))}</a></p><p>${place}</p>`;
  const rest = [why, advice]
    .filter((text): text is string => text !== null)
    .map((text) => `<p>${sentence(text)}</p>`)
    .join('');
  const from = source === null ? '' : `<p class="note">${sentence(source)}</p>`;
  const reply =
    answer === null
      ? '<div class="answer none"><p>No answer yet.</p></div>'
      : `<div class="answer"><p class="label">Author’s answer</p><p>${sentence(answer)}</p></div>`;
  // Who mends the entry wants the advice at once; who reads the sheet wants the finding and its answer.
  const more = rest + from === '' ? '' : answers ? fold(advice === null ? 'Why' : 'Why, and what to do', rest + from) : rest + from;
  return `<li><div class="f-what">${head}</div><div><p>${sentence(message)}</p>${more}</div>${answers ? reply : ''}</li>`;
}

/** Sentence above the findings: how many, how many answered. */
export function findingsSentence(diagnostics: readonly Diagnostic[]): string {
  if (diagnostics.length === 0) return 'The checks have nothing to say about this entry.';
  const answered = diagnostics.filter((diagnostic) => diagnostic.answer !== null).length;
  return `What the checks say about this entry, and what the author answers: ${counted(diagnostics.length, 'finding')}, ${answered} answered.`;
}

/** One correction with the letter of the revision it made. */
export interface RevisedCorrection extends Correction {
  readonly revision: string;
}

/** Letters by date: the first issue is A, each later date of corrections the next. Newest first. */
export function revisedCorrections(corrections: readonly Correction[]): readonly RevisedCorrection[] {
  const dates = [...new Set(corrections.map((correction) => correction.date))].sort();
  return [...corrections]
    .sort((one, other) => (one.date < other.date ? 1 : one.date > other.date ? -1 : 0))
    .map((correction) => ({ ...correction, revision: revisionLetter(dates.indexOf(correction.date) + 1) }));
}

function revisionLetter(index: number): string {
  return 'ABCDEFGHJKLMNPQRSTUVWXYZ'.charAt(index) || `Z${index - 22}`;
}

/** Corrections as a table: revision, date, where, was, is, why; the first issue last. */
export function correctionList(corrections: readonly Correction[], issued: string | null): string {
  const rows = revisedCorrections(corrections).map(
    ({ revision, date, where, was, is, why }) =>
      `<tr><th scope="row" class="ref">${revision}</th><td class="m1 date">${escapeText(date)}</td><td>${escapeText(where)}</td><td class="m1">${was === null ? '<span class="faded">–</span>' : `<del>${escapeText(was)}</del>`}</td><td class="m1">${is === null ? '<span class="faded">–</span>' : escapeText(is)}</td><td>${sentence(why)}</td></tr>`,
  );
  const first =
    issued === null
      ? ''
      : `<tr><th scope="row" class="ref">A</th><td class="m1 date">${escapeText(issued)}</td><td>First issue</td><td></td><td></td><td></td></tr>`;
  return scrollRegion(
    'Corrections',
    '<table class="corrections"><caption class="vh">Corrections, newest first.</caption><thead><tr><th scope="col">Rev.</th><th scope="col">Date</th><th scope="col">Where</th><th scope="col">Was</th><th scope="col">Is</th><th scope="col">Why</th></tr></thead>' +
      `<tbody>${rows.join('')}${first}</tbody></table>`,
  );
}
